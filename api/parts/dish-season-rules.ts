import { contradictory, type Rule } from "../validation/rule.ts";
import type { Dish } from "./dish.ts";

/** The seasons of an off-axis dish on a polar axis depend on its hemisphere. */
export const hemisphereKnown: Rule<{
	readonly dish?: Dish | undefined;
	readonly latitude?: number | undefined;
}> = ({ dish, latitude }) =>
	dish?.kind === "offsetPolar" && latitude === undefined
		? [
				contradictory(
					"/latitude",
					"an off-axis dish on a polar axis shows the sun another aperture in summer than in winter: give the latitude, which tells its hemisphere",
				),
			]
		: [];
