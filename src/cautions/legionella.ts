import { type CautionRule, type StandingTank, temperature } from "./caution.ts";

const SAFE = 333.15; // [K] 60 °C, storage temperature; HSE, Legionnaires' disease, HSG274 Part 2, 2014
const GROWING = [298.15, 318.15] as const; // [K] 25–45 °C in which it multiplies; WHO, Legionella and the prevention of legionellosis, 2007 (quoted in a public copy)
const LONG = 4 * 3600; // [s] common practice, no source

/** Bacteria in lukewarm water. */
export const legionella: CautionRule<StandingTank> = ({ outcome, plant }) => {
	const coldest = Math.min(...outcome.endTemperatures);
	const lukewarm = lukewarmTime(outcome.series.time, outcome.series.tankMean);
	if (coldest >= SAFE && lukewarm < LONG) return [];
	return [
		{
			code: "legionella",
			severity: "warning",
			parameters: {
				coldestLayer: temperature(coldest),
				safeTemperature: temperature(SAFE),
				lukewarmTime: { kind: "duration", value: lukewarm },
				volume: { kind: "volume", value: plant.tank.fill },
			},
			message:
				"Part of the {volume} ends at {coldestLayer}; Legionella grows in water kept at 25 to 45 °C, where the tank's mean spends {lukewarmTime} of this run, and dies at {safeTemperature}. Bring all of it to {safeTemperature} as often as your local health code requires, if need be with a backup.",
		},
	];
};

/** Time that the mean of the tank is within the growth range [s]. */
function lukewarmTime(time: readonly number[], mean: readonly number[]): number {
	let sum = 0;
	for (let i = 1; i < time.length; i++) {
		const middle = (mean[i]! + mean[i - 1]!) / 2;
		if (middle >= GROWING[0] && middle <= GROWING[1]) sum += time[i]! - time[i - 1]!;
	}
	return sum;
}
