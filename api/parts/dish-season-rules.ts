import { contradictory, type Rule } from "../validation/rule.ts";
import type { Dish } from "./dish.ts";

/** The seasons of a fixed-focus dish depend on its hemisphere. */
export const hemisphereKnown: Rule<{
	readonly dish?: Dish | undefined;
	readonly latitude?: number | undefined;
}> = ({ dish, latitude }) =>
	dish?.kind === "fixedFocusOffset" && latitude === undefined
		? [
				contradictory(
					"/latitude",
					"a fixed-focus dish shows the sun another aperture in summer than in winter: give the latitude, which tells its hemisphere",
				),
			]
		: [];
