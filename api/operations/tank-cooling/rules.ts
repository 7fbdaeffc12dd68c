import { mostMoisture } from "../../parts/insulation-rules.ts";
import {
	fillWithinVolume,
	nodesOfProfile,
	reliefOfClosedTank,
	startBelowBoiling,
	tankDimensions,
} from "../../parts/tank-rules.ts";
import {
	contradictory,
	type Rule,
	type RuleFault,
	refuseFaults,
	said,
	tooLarge,
} from "../../validation/rule.ts";
import { toSi } from "../../wire/units.ts";
import { started } from "./plan.ts";
import type { TankCoolingRequest } from "./request.ts";

type CoolingRule = Rule<TankCoolingRequest>;

const rowsWithinTime: CoolingRule = ({ durationH, seriesStepMin }) =>
	toSi.minutes(seriesStepMin) > toSi.hours(durationH)
		? [
				contradictory(
					"/seriesStepMin",
					`a row every ${said(seriesStepMin)} min does not fit into ${said(durationH)} h`,
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

const RULES: readonly CoolingRule[] = [
	fillWithinVolume,
	tankDimensions,
	reliefOfClosedTank,
	nodesOfProfile,
	rowsWithinTime,
	rowsBounded,
	dryEnough,
];

/** A tank whose shape holds is asked whether its water is liquid. */
function liquid(request: TankCoolingRequest): readonly RuleFault[] {
	const tank = started(request.tank, (_, value) => value);
	return startBelowBoiling({
		tank,
		site: { elevationM: request.elevationM },
		draw: { mainsTemperatureC: 0 }, // no mains: the tank has its start temperature
	});
}

/** Ends a request for a tank's cooling that keeps the contract but contradicts itself or asks for the impossible. */
export function requireSoundTank(request: TankCoolingRequest): void {
	refuseFaults([...RULES.flatMap((rule) => rule(request)), ...liquid(request)]);
}
