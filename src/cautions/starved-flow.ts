import type { CautionRule } from "./caution.ts";

/** Fluid too thick for its pump. */
export const starvedFlow: CautionRule = ({ outcome, plant: { loop } }) =>
	outcome.starvedTime > 0
		? [
				{
					code: "starvedFlow",
					severity: "info",
					parameters: { fluid: loop.fluid.name, time: { kind: "duration", value: outcome.starvedTime } },
					message:
						"For {time} the pump gives less than it is set to, because cold {fluid} is thick. A wider pipe, a thinner fluid or a stronger pump mends it; a licensed fitter can say which, and the pump's maker how long it bears that.",
				},
			]
		: [];
