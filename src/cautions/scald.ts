import { type CautionRule, type StandingTank, temperature } from "./caution.ts";

const SCALDING = 318.15; // [K] 45 °C: for a tap used by children or the elderly; hotter water burns faster. Common practice, no source

/** Scalding water at the tap. */
export const scald: CautionRule<StandingTank> = ({ outcome, plant }) => {
	const hottest = Math.max(outcome.endTop, ...plant.tank.startTemperatures);
	if (hottest <= SCALDING) return [];
	return [
		{
			code: "scald",
			severity: "danger",
			parameters: { tankTemperature: temperature(hottest), tapTemperature: temperature(SCALDING) },
			message:
				"The tank holds water at {tankTemperature}, which scalds. Mix it down at the tap with a listed thermostatic valve to {tapTemperature} or the limit of your local code.",
		},
	];
};
