import { type CautionRule, temperature } from "./caution.ts";

const NEAR = 5; // [K] below boiling within which a hotter day boils the tank; common practice, no source

/** Water at or near boiling. */
export const boiling: CautionRule = ({ outcome }) => {
	const parameters = {
		boilingPoint: temperature(outcome.boilingPoint),
		topTemperature: temperature(outcome.endTop),
	};
	if (outcome.boils)
		return [
			{
				code: "waterBoils",
				severity: "danger",
				parameters,
				message:
					"The tank boils at {boilingPoint} at this elevation and pressure. Steam scalds and drives water out of the vent or relief valve: set the high limit lower, or take less sun, and follow your local code.",
			},
		];
	if (outcome.endTop < outcome.boilingPoint - NEAR) return [];
	return [
		{
			code: "waterNearBoiling",
			severity: "warning",
			parameters,
			message:
				"The top of the tank ends at {topTemperature}, close to boiling at {boilingPoint} at this elevation and pressure. A brighter day boils it: have the high limit tested by the licensed person who commissions the plant.",
		},
	];
};
