import {
	practice,
	type StandingConditions,
	type StandingTask,
	standardPressure,
	type Tank,
} from "../../../src/index.ts";
import { coreTank, type Tank as WireTank } from "../../parts/tank.ts";
import type { Fill } from "../../wire/defaults.ts";
import { toSi } from "../../wire/units.ts";
import type { TankCoolingRequest } from "./request.ts";

/** A request for a tank's cooling as the core wants it. */
export interface TankCoolingPlan {
	readonly tank: Tank;
	readonly conditions: StandingConditions;
	readonly task: StandingTask;
}

const START_C = 60; // [°C] hot from a day of sun

/** A tank with its start temperature, which a tank on its own has from no mains. */
export function started(tank: WireTank, fill: Fill): WireTank {
	const start =
		tank.startTemperatureC ?? fill("/tank/startTemperatureC", START_C, practice("hot from a day of sun"));
	return { ...tank, startTemperatureC: start };
}

/** The limits asked for, in the order asked [°C]. */
export function limitsOf({ untilC }: TankCoolingRequest): readonly number[] {
	return typeof untilC === "number" ? [untilC] : untilC;
}

export function tankCoolingPlan(request: TankCoolingRequest, fill: Fill): TankCoolingPlan {
	const { ambientC, windMPerS, elevationM } = request;
	return {
		tank: coreTank(started(request.tank, fill), START_C, fill),
		conditions: {
			ambient: toSi.celsius(ambientC),
			wind: windMPerS,
			pressure: standardPressure(elevationM),
		},
		task: {
			duration: toSi.hours(request.durationH),
			rowStep: toSi.minutes(request.seriesStepMin),
			limits: limitsOf(request).map(toSi.celsius),
			limitAt: request.untilAt,
		},
	};
}
