import { mostMoisture } from "../../parts/insulation.ts";
import {
	fillWithinVolume,
	nodesOfProfile,
	reliefOfClosedTank,
	startBelowBoiling,
	tankDimensions,
} from "../../parts/tank.ts";
import { contradictory, fourDigits, type Rule, tooLarge } from "../../validation/rule.ts";
import { toSi } from "../../wire/units.ts";
import type { CoolingDesigns } from "./plan.ts";
import type { TankCoolingRequest } from "./request.ts";

type CoolingRule = Rule<TankCoolingRequest, CoolingDesigns>;

const rowsWithinTime: CoolingRule = ({ durationH, seriesStepMin }) =>
	toSi.minutes(seriesStepMin) > toSi.hours(durationH)
		? [
				contradictory(
					"/seriesStepMin",
					`seriesStepMin of ${fourDigits(seriesStepMin)} min is longer than durationH of ${fourDigits(durationH)} h; send a shorter step`,
				),
			]
		: [];

const MAX_ROWS = 672; // a week by quarter hours

const rowsBounded: CoolingRule = ({ durationH, seriesStepMin }) => {
	const rows = Math.ceil(toSi.hours(durationH) / toSi.minutes(seriesStepMin));
	const detail = `durationH and seriesStepMin make ${rows} rows, more than the limit of ${MAX_ROWS}; send a longer step or a shorter duration`;
	return rows > MAX_ROWS ? ["durationH", "seriesStepMin"].map((name) => tooLarge(`/${name}`, detail)) : [];
};

const dryEnough: CoolingRule = ({ tank }) => mostMoisture("/tank/insulation", tank.insulation);

const liquidAtStart: CoolingRule = ({ elevationM }, designs) => startBelowBoiling(designs, elevationM);

/** Rules of a tank-cooling request. */
export const COOLING_RULES: readonly CoolingRule[] = [
	fillWithinVolume,
	tankDimensions,
	reliefOfClosedTank,
	nodesOfProfile,
	rowsWithinTime,
	rowsBounded,
	dryEnough,
	liquidAtStart,
];
