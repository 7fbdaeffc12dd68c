import type { CautionRule } from "./caution.ts";

/** Fluid too viscous for its pump. */
export const starvedFlow: CautionRule = ({ outcome, plant: { loop } }) =>
	outcome.starvedTime > 0
		? [
				{
					code: "starvedFlow",
					severity: "info",
					parameters: { fluid: loop.fluid.name, time: { kind: "duration", value: outcome.starvedTime } },
					message:
						"For {time} the pump delivers less than its set flow, because cold {fluid} is viscous. A wider pipe, a thinner fluid or a stronger pump fixes it; ask a licensed fitter which, and the pump's maker how long the pump withstands it.",
				},
			]
		: [];
