import { type RuleFault, refuseFaults } from "../validation/rule.ts";
import { coilFitsTank, coilLength } from "./coil-rules.ts";
import { limitsAboveStart, oilLimitWithinFluid, startAboveStop } from "./control-rules.ts";
import type { DayRule, WarmUpRequest } from "./day-request.ts";
import { dishFocus, dishOffset, dishSize } from "./dish-rules.ts";
import { drawDemand, scaleOfProfile, tapAboveMains } from "./draw-rules.ts";
import { spreadsOfRange } from "./range-rules.ts";
import { hollowBehindOpening, receiverWithinDish, tubeWound } from "./receiver-rules.ts";
import { drawsWithinRun, endAfterStart } from "./run-rules.ts";
import { ambientInOrder, beamMeasured, columnsOfOneLength, rowsCoverRun, timesRise } from "./sky-rules.ts";
import {
	fillWithinVolume,
	nodesOfProfile,
	reliefOfClosedTank,
	startBelowBoiling,
	tankDimensions,
} from "./tank-rules.ts";
import { tubeWalls } from "./tube-rules.ts";

const RULES: readonly DayRule[] = [
	endAfterStart,
	ambientInOrder,
	columnsOfOneLength,
	beamMeasured,
	timesRise,
	rowsCoverRun,
	dishSize,
	dishFocus,
	dishOffset,
	receiverWithinDish,
	hollowBehindOpening,
	tubeWound,
	tubeWalls,
	startAboveStop,
	limitsAboveStart,
	oilLimitWithinFluid,
	coilLength,
	coilFitsTank,
	fillWithinVolume,
	tankDimensions,
	reliefOfClosedTank,
	nodesOfProfile,
	startBelowBoiling,
	drawDemand,
	scaleOfProfile,
	tapAboveMains,
	drawsWithinRun,
	spreadsOfRange,
];

/** Every fault that the rules find in a request, at once. */
export function warmUpFaults(request: WarmUpRequest): readonly RuleFault[] {
	return RULES.flatMap((rule) => rule(request));
}

/** Ends a request that keeps the contract but contradicts itself or asks for the impossible. */
export function requireSound(request: WarmUpRequest): void {
	refuseFaults(warmUpFaults(request));
}
