import { outletPipe } from "../instant/task.ts";
import { type CautionRule, temperature } from "./caution.ts";
import type { InstantCircumstances } from "./instant.ts";

/** Water in the focus when the tap is closed. */
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
						"When the tap closes in full sun, the water in the receiver stops. It boils at {boilingPoint} within about a minute, and the dry receiver reaches {stagnationTemperature}: the next draw brings steam and scalding water. The dish must turn away by itself before the flow stops, and the receiver needs a listed relief valve with no valve between; have a licensed plumber verify both.",
				},
			]
		: [];
