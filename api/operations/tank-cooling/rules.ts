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
					`a row every ${fourDigits(seriesStepMin)} min does not fit into ${fourDigits(durationH)} h`,
				),
			]
		: [];

const MOST_ROWS = 672; // a week by quarter hours

const rowsBounded: CoolingRule = ({ durationH, seriesStepMin }) => {
	const rows = Math.ceil(toSi.hours(durationH) / toSi.minutes(seriesStepMin));
	const detail = `${rows} rows are more than the ${MOST_ROWS} that one request may ask: take longer steps or less time`;
	return rows > MOST_ROWS ? ["durationH", "seriesStepMin"].map((name) => tooLarge(`/${name}`, detail)) : [];
};

const dryEnough: CoolingRule = ({ tank }) => mostMoisture("/tank/insulation", tank.insulation);

const liquidAtStart: CoolingRule = ({ elevationM }, designs) => startBelowBoiling(designs, elevationM);

/** What a request for a tank's cooling must keep to. */
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
