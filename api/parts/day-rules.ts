import type { Rule } from "../validation/rule.ts";
import { coilFitsTank, coilLength } from "./coil.ts";
import type { DayDesigns } from "./day-plan.ts";
import type { DayRequest } from "./day-request.ts";
import { dishFocus, dishOffset, dishSize } from "./dish.ts";
import { drawDemand, drawsWithinRun, scaleOfProfile, tapAboveMains } from "./draw.ts";
import { limitsAboveStart, oilLimitWithinFluid, pipeWalls, startAboveStop } from "./loop.ts";
import { spreadsOfRange } from "./range.ts";
import { openingWithinCavity, receiverTubeWall, receiverWithinDish, tubeWindable } from "./receiver.ts";
import { endAfterStart, rowsCoverRun } from "./run.ts";
import { ambientInOrder, beamMeasured, columnsOfOneLength, timesRise } from "./sky.ts";
import {
	fillWithinVolume,
	nodesOfProfile,
	reliefOfClosedTank,
	startBelowBoiling,
	tankDimensions,
} from "./tank.ts";
import { tubeWall } from "./tube.ts";

type DayRule = Rule<DayRequest, DayDesigns>;

const coilWall: DayRule = ({ coil }) => tubeWall("/coil", coil);

const liquidAtStart: DayRule = ({ site }, designs) => startBelowBoiling(designs, site.elevationM);

/** Rules for a day's request and its plant. */
export const DAY_RULES: readonly DayRule[] = [
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
	openingWithinCavity,
	tubeWindable,
	receiverTubeWall,
	pipeWalls,
	coilWall,
	startAboveStop,
	limitsAboveStart,
	oilLimitWithinFluid,
	coilLength,
	coilFitsTank,
	fillWithinVolume,
	tankDimensions,
	reliefOfClosedTank,
	nodesOfProfile,
	liquidAtStart,
	drawDemand,
	scaleOfProfile,
	tapAboveMains,
	drawsWithinRun,
	spreadsOfRange,
];
