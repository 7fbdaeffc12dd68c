import {
	type DayAir,
	designTank,
	practice,
	type StandingConditions,
	type StandingTask,
	standardPressure,
	type Tank,
	type WallMaterialId,
} from "../../../src/index.ts";
import { wireAssumed } from "../../parts/assumption.ts";
import { airAt } from "../../parts/day-air.ts";
import { sparseTank } from "../../parts/tank.ts";
import { type Assumed, type Completed, sentOr } from "../../wire/defaults.ts";
import { toSi } from "../../wire/units.ts";
import type { TankCoolingRequest } from "./request.ts";

/** A tank-cooling request in the terms of the core. */
export interface TankCoolingPlan {
	readonly tank: Tank;
	readonly conditions: StandingConditions;
	readonly task: StandingTask;
	readonly surroundings: number; // temperature around the tank [K]
	readonly weatherproof: boolean;
	readonly wall: WallMaterialId;
	readonly air: DayAir;
	readonly limitsC: readonly number[]; // in the order of the request [°C]
}

const START_C = 60; // [°C] hot from a day of sun

/** The tank as designed, with the values assumed for it. */
export interface CoolingDesigns {
	readonly tank: Tank;
	readonly assumed: readonly Assumed[];
}

export function coolingDesigns({ tank: sent }: TankCoolingRequest): CoolingDesigns {
	const start = sent.startTemperatureC;
	const { value, assumed } =
		start === undefined
			? sentOr(undefined, "/tank/startTemperatureC", START_C, practice("hot from a day of sun"))
			: { value: start, assumed: [] };
	const mains = toSi.celsius(START_C); // not used: the tank has a start temperature
	const tank = designTank(sparseTank({ ...sent, startTemperatureC: value }), mains);
	return { tank: tank.design, assumed: [...assumed, ...wireAssumed(tank.assumed)] };
}

/** @param sent  the request as received */
export function tankCoolingPlan(
	request: TankCoolingRequest,
	{ tank, assumed }: CoolingDesigns,
	sent: unknown,
): Completed<TankCoolingPlan> {
	const { ambientC, windMPerS, elevationM, untilC } = request;
	const { surroundings } = tank;
	const conditions = {
		ambient: toSi.celsius(ambientC),
		wind: windMPerS,
		pressure: standardPressure(elevationM),
	};
	const limitsC = typeof untilC === "number" ? [untilC] : untilC;
	return {
		value: {
			tank,
			conditions,
			surroundings: surroundings.kind === "indoors" ? surroundings.temperature : conditions.ambient,
			weatherproof: surroundings.kind === "indoors" || request.tank.insulation.weatherproof,
			wall: request.tank.wallMaterial,
			air: airAt(["ambientC"], ambientC, sent),
			limitsC,
			task: {
				duration: toSi.hours(request.durationH),
				rowStep: toSi.minutes(request.seriesStepMin),
				limits: limitsC.map(toSi.celsius),
				limitAt: request.untilAt,
			},
		},
		assumed,
	};
}
