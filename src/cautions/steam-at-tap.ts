import { drawnFlow } from "../instant/outlet-outcome.ts";
import { outletPipe } from "../instant/task.ts";
import { boilingPoint } from "../sky/atmosphere.ts";
import { type CautionRule, temperature } from "./caution.ts";
import type { InstantCircumstances } from "./instant.ts";

/** Water that boils as soon as it leaves the pressure of the line. */
export const steamAtTap: CautionRule<InstantCircumstances> = (circumstances) => {
	const hottest = hottestAtTap(circumstances);
	const open = boilingPoint(circumstances.outcome.best.conditions.pressure);
	if (hottest < open) return [];
	return [
		{
			code: "steamAtTap",
			severity: "danger",
			parameters: { tapTemperature: temperature(hottest), openBoilingPoint: temperature(open) },
			message:
				"Under the best sun the wanted flow reaches the tap at {tapTemperature}, and in the open air of this elevation it boils at {openBoilingPoint}: it leaves as spitting steam and scalds at once. Let more of it run, take a smaller dish, or turn the dish partly away; a listed thermostatic mixing valve at the tap, fitted by a licensed plumber to your local code, must withstand that temperature.",
		},
	];
};

/** Temperature of the wanted flow under the best sun, or the wanted temperature without a wanted flow [K]. */
function hottestAtTap({ heater, task, outcome }: InstantCircumstances): number {
	const { arrangement, duty, wantedFlow } = task;
	const outlet = outletPipe(arrangement);
	if (!outlet || wantedFlow === undefined || outcome.best.serving === "tooLittle") return duty.wanted;
	const { atTap } = drawnFlow(heater, outlet, duty, wantedFlow, outcome.best.conditions);
	return Math.max(duty.wanted, atTap ?? duty.boiling); // water that boils on the way arrives as steam
}
