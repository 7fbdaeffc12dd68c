import { loopContent } from "../plant/content.ts";
import type { CautionRule } from "./caution.ts";

const AIR_AT_FILL = 283.15; // [K] 10 °C, lowest temperature of the fluid; common practice, no source

/** Fluid that expands. */
export const expansion: CautionRule = ({ outcome, plant: { loop, receiver, coil } }) => {
	const content = loopContent({ loop, coil, receiver });
	const hot = Math.max(outcome.maximumOil, loop.control.oilLimit);
	const needed = content * (loop.fluid.density(AIR_AT_FILL) / loop.fluid.density(hot) - 1);
	const tooSmall = needed > loop.expansionVolume;
	return [
		{
			code: tooSmall ? "expansionTooSmall" : "expansion",
			severity: tooSmall ? "danger" : "info",
			parameters: {
				needed: { kind: "volume", value: needed },
				provided: { kind: "volume", value: loop.expansionVolume },
				content: { kind: "volume", value: content },
			},
			message: tooSmall
				? "The loop's {content} of fluid expand by {needed} when hot, and the vessel holds only {provided}. Pressure would burst the loop and spill hot fluid: fit a larger vessel, as a licensed fitter sizes it."
				: "The loop's {content} of fluid expand by {needed} when hot. Keep {provided} of volume free for it, open or with its own relief, to your local code.",
		},
	];
};
