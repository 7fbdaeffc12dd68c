import { outletPipe } from "../instant/task.ts";
import { type CautionRule, temperature } from "./caution.ts";
import type { InstantCircumstances } from "./instant.ts";

/** Water that stands in the focus when the tap closes. */
export const standingWater: CautionRule<InstantCircumstances> = ({ outcome, task }) =>
	outletPipe(task.arrangement)
		? [
				{
					code: "standingWaterBoils",
					severity: "danger",
					parameters: {
						boilingPoint: temperature(task.duty.boiling),
						stagnationTemperature: temperature(outcome.stagnation),
					},
					message:
						"When the tap closes in full sun the water in the receiver stands. It boils at {boilingPoint} within a minute or so, and the dry receiver goes on to {stagnationTemperature}: steam and scalding water follow at the next tap. The dish must turn away by itself before the flow stops, and a listed relief valve must stand at the receiver with no valve between; have a licensed plumber prove both.",
				},
			]
		: [];
