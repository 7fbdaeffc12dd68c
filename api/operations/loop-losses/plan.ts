import {
	boilingPoint,
	type FurtherTube,
	fluidById,
	furtherSegment,
	type LaggingQuestions,
	type Loop,
	type LoopConditions,
	practice,
	standardPressure,
	WALL_MATERIALS,
} from "../../../src/index.ts";
import { coreLoop } from "../../parts/loop.ts";
import type { Assumed, Fill } from "../../wire/defaults.ts";
import { fromSi, toSi } from "../../wire/units.ts";
import type { LoopLossesRequest } from "./request.ts";

/** A request for a loop's losses as the core wants it. */
export interface LoopLossesPlan {
	readonly loop: Loop;
	readonly conditions: LoopConditions;
	readonly asked: LaggingQuestions;
	readonly further: readonly FurtherTube[];
	readonly startTemperatures: readonly number[]; // [K]
}

const RETURN_BELOW = 15; // [K] of the return below the supply
const COLD_STARTS_C = [-10, 0, 10, 20, 40, 60]; // [°C]
const IDLE = ["/loop/control/", "/loop/expansionL"]; // what a loop on its own makes no use of

/** Whether a filled-in value bears on the answer: what starts the pump and what takes up the fluid do not. */
export const matters = ({ pointer }: Pick<Assumed, "pointer">): boolean =>
	!IDLE.some((idle) => pointer.startsWith(idle));

export function loopLossesPlan(request: LoopLossesRequest, fill: Fill): LoopLossesPlan {
	const pressure = standardPressure(request.elevationM);
	const openBoiling = boilingPoint(pressure);
	const loop = coreLoop(request.loop, 0, openBoiling, openBoiling, fill);
	const supplyTemperature = toSi.celsius(request.supplyTemperatureC);
	const returnTemperature = toSi.celsius(returnC(request, fill));
	const further = request.furtherTubes.map(coreTube);
	const middle = (supplyTemperature + returnTemperature) / 2;
	return {
		loop,
		conditions: {
			supplyTemperature,
			returnTemperature,
			ambient: toSi.celsius(request.ambientC),
			wind: request.windMPerS,
			pressure,
			others: further.map((tube) => furtherSegment(tube, loop.fluid, middle)),
		},
		asked: {
			addedThicknesses: request.addedThicknessMm.map(toSi.millimetres),
			moisture: request.wetMoistFraction,
			coverEmittance: request.coverEmittance,
		},
		further,
		startTemperatures: startsC(request, fill).map(toSi.celsius),
	};
}

function returnC(
	{ supplyTemperatureC, returnTemperatureC, ambientC }: LoopLossesRequest,
	fill: Fill,
): number {
	if (returnTemperatureC !== undefined) return returnTemperatureC;
	const below = Math.max(supplyTemperatureC - RETURN_BELOW, Math.min(supplyTemperatureC, ambientC));
	return fill("/returnTemperatureC", below, practice("15 K below the supply, no colder than the air"));
}

/** Those asked for, else the usual ones that lie within what is known of the fluid. */
function startsC({ coldStartTemperatureC, loop }: LoopLossesRequest, fill: Fill): readonly number[] {
	if (coldStartTemperatureC !== undefined) return coldStartTemperatureC;
	const [low, high] = fluidById(loop.fluid).range.map(fromSi.celsius) as [number, number];
	return fill(
		"/coldStartTemperatureC",
		COLD_STARTS_C.filter((celsius) => celsius >= low && celsius <= high),
		practice("from a frosty morning to a warm loop, as far as the fluid is known"),
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
