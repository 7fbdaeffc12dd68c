import {
	boilingPoint,
	type DayAir,
	designLoop,
	type FurtherTube,
	fluidById,
	furtherSegment,
	type InsulationQuestions,
	type Loop,
	type LoopConditions,
	type loopCautions,
	practice,
	standardPressure,
	WALL_MATERIALS,
} from "../../../src/index.ts";
import { wireAssumed } from "../../parts/assumption.ts";
import { airAt } from "../../parts/day-air.ts";
import { sparseLoop } from "../../parts/loop.ts";
import { type Completed, sentOr } from "../../wire/defaults.ts";
import { fromSi, toSi } from "../../wire/units.ts";
import type { LoopLossesRequest } from "./request.ts";

/** A loop-losses request in the terms of the core. */
export interface LoopLossesPlan {
	readonly loop: Loop;
	readonly conditions: LoopConditions;
	readonly lagging: InsulationQuestions;
	readonly further: readonly FurtherTube[];
	readonly startTemperatures: readonly number[]; // [K]
	readonly weatherproof: boolean;
	readonly insulated: boolean; // either pipe
	readonly air: DayAir;
	readonly walls: Parameters<typeof loopCautions>[0]["walls"];
}

const RETURN_BELOW = 15; // [K] of the return below the supply
const COLD_STARTS_C = [-10, 0, 10, 20, 40, 60]; // [°C]

/** @param sent  the request as received */
export function loopLossesPlan(
	request: LoopLossesRequest,
	_designs: unknown,
	sent: unknown,
): Completed<LoopLossesPlan> {
	const pressure = standardPressure(request.elevationM);
	const boiling = boilingPoint(pressure);
	const around = { content: 0, tankBoiling: boiling, openBoiling: boiling };
	const { design: loop, assumed } = designLoop(sparseLoop(request.loop), around);
	const [back, starts] = [returnC(request), startsC(request)];
	const supplyTemperature = toSi.celsius(request.supplyTemperatureC);
	const returnTemperature = toSi.celsius(back.value);
	const further = request.furtherTubes.map(coreTube);
	const middle = (supplyTemperature + returnTemperature) / 2;
	const pipes = [request.loop.supply.insulation, request.loop.return.insulation];
	return {
		value: {
			loop,
			conditions: {
				...{ supplyTemperature, returnTemperature, pressure },
				ambient: toSi.celsius(request.ambientC),
				wind: request.windMPerS,
				others: further.map((tube) => furtherSegment(tube, loop.fluid, middle)),
			},
			lagging: {
				addedThicknesses: request.addedThicknessMm.map(toSi.millimetres),
				moisture: request.wetMoistFraction,
				coverEmittance: request.coverEmittance,
			},
			further,
			startTemperatures: starts.value.map(toSi.celsius),
			weatherproof: pipes.every((layer) => layer.weatherproof || layer.thicknessMm === 0),
			insulated: pipes.some(({ thicknessMm }) => thicknessMm > 0),
			air: airAt(["ambientC"], request.ambientC, sent),
			walls: {
				supply: request.loop.supply.material,
				return: request.loop.return.material,
				further: request.furtherTubes.map(({ material }) => material),
			},
		},
		assumed: [...wireAssumed(assumed), ...back.assumed, ...starts.assumed],
	};
}

function returnC(request: LoopLossesRequest): Completed<number> {
	const { supplyTemperatureC, returnTemperatureC, ambientC } = request;
	const below = Math.max(supplyTemperatureC - RETURN_BELOW, Math.min(supplyTemperatureC, ambientC));
	const grounds = practice("15 K below the supply, no colder than the air");
	return sentOr(returnTemperatureC, "/returnTemperatureC", below, grounds);
}

/** The temperatures sent, else the usual ones within the known range of the fluid. */
function startsC({ coldStartTemperatureC, loop }: LoopLossesRequest): Completed<readonly number[]> {
	const [low, high] = fluidById(loop.fluid).range.map(fromSi.celsius) as [number, number];
	return sentOr<readonly number[]>(
		coldStartTemperatureC,
		"/coldStartTemperatureC",
		COLD_STARTS_C.filter((celsius) => celsius >= low && celsius <= high),
		practice("from a frosty morning to a warm loop, within the known range of the fluid"),
	);
}

function coreTube(tube: LoopLossesRequest["furtherTubes"][number]): FurtherTube {
	return {
		length: tube.lengthM,
		innerDiameter: toSi.millimetres(tube.innerDiameterMm),
		roughness: WALL_MATERIALS[tube.material].roughness,
		helixDiameter: tube.helixDiameterM ?? 0,
	};
}
