import { type CautionRule, temperature } from "./caution.ts";
import type { InstantCircumstances } from "./instant.ts";

/** Water at rest in a coil above its boiling point. */
export const steamInCoil: CautionRule<InstantCircumstances> = ({ outcome, task }) => {
	if (!outcome.vessel) return [];
	const { charge } = outcome.vessel.charge;
	if (charge < task.duty.boiling) return [];
	return [
		{
			code: "steamInCoil",
			severity: "danger",
			parameters: { oilTemperature: temperature(charge), boilingPoint: temperature(task.duty.boiling) },
			message:
				"Between draws the water in the coil reaches the oil's {oilTemperature} and boils, which it does at {boilingPoint} in this line: the next tap spits steam. Fit a listed relief valve and a thermostatic mixing valve at the coil's outlet, or charge the vessel less hot; by a licensed plumber to your local code.",
		},
	];
};
