import { type CautionRule, temperature } from "./caution.ts";
import type { InstantCircumstances } from "./instant.ts";

const SCALDING = 318.15; // [K] 45 °C, as for a tank's tap; common practice, no source

/** Water that is hotter the less the tap is opened. */
export const hotTap: CautionRule<InstantCircumstances> = ({ task }) => [
	{
		code: "tapRunsHot",
		severity: "danger",
		parameters: { tapTemperature: temperature(SCALDING), wantedTemperature: temperature(task.duty.wanted) },
		message:
			"An instant heater does not control its temperature: half the flow doubles the rise, as does a sun that comes out of cloud, and water far hotter than the wanted {wantedTemperature} scalds. Limit the tap to {tapTemperature}, or the limit of your local code, with a listed thermostatic mixing valve.",
	},
];
