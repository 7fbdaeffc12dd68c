import type { WarmUpRequest } from "../schemas/warm-up-request.ts";
import { coilFitsTank, coilLength } from "./coil.ts";
import { limitsAboveStart, oilLimitWithinFluid, startAboveStop } from "./control.ts";
import { dishFocus, dishOffset, dishSize } from "./dish.ts";
import { drawDemand, scaleOfProfile, tapAboveMains } from "./draw.ts";
import { type Rule, type RuleFault, refuseFaults } from "./fault.ts";
import { spreadsOfRange } from "./range.ts";
import { hollowBehindOpening, receiverWithinDish, tubeWound } from "./receiver.ts";
import { drawsWithinRun, endAfterStart } from "./run.ts";
import { ambientInOrder, beamMeasured, columnsOfOneLength, rowsCoverRun, timesRise } from "./sky.ts";
import {
	fillWithinVolume,
	nodesOfProfile,
	reliefOfClosedTank,
	startBelowBoiling,
	tankDimensions,
} from "./tank.ts";
import { tubeWalls } from "./tubes.ts";

const RULES: readonly Rule[] = [
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
