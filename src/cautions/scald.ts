import { type CautionRule, type StandingTank, temperature } from "./caution.ts";

const SCALDING = 318.15; // [K] 45 °C: a tap that children or the old use; hotter water burns the faster the hotter. Common practice, no source

/** Water that burns skin at the tap. */
export const scald: CautionRule<StandingTank> = ({ outcome, plant }) => {
	const hottest = Math.max(outcome.endTop, ...plant.tank.startTemperatures);
	if (hottest <= SCALDING) return [];
	return [
		{
			code: "scald",
			severity: "danger",
			parameters: { tankTemperature: temperature(hottest), tapTemperature: temperature(SCALDING) },
			message:
				"The tank holds water at {tankTemperature}, which scalds. Mix it down at the tap with a listed thermostatic valve to {tapTemperature} or what your local code says.",
		},
	];
};
