import { type CautionRule, temperature } from "./caution.ts";
import type { InstantCircumstances } from "./instant.ts";

const SCALDING = 318.15; // [K] 45 °C, as for a tank's tap; common practice, no source

/** Water that comes the hotter the less the tap is opened. */
export const hotTap: CautionRule<InstantCircumstances> = ({ task }) => [
	{
		code: "tapRunsHot",
		severity: "danger",
		parameters: { tapTemperature: temperature(SCALDING), wantedTemperature: temperature(task.duty.wanted) },
		message:
			"An instant heater has no set temperature of its own: half the flow doubles the rise, as does a sun that comes out of cloud, and water far hotter than the {wantedTemperature} asked for scalds. Hold the tap at {tapTemperature} or what your local code says with a listed thermostatic mixing valve.",
	},
];
