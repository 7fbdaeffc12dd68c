import { requireWithin } from "../errors.ts";
import { bracketedRoot } from "../numeric/root.ts";
import type { Dish } from "./dish.ts";
import { interceptFactor } from "./intercept.ts";

const TOLERANCE = 1e-7; // of the focal length

/** Diameter of the circle about the focus that takes a given share of the reflected light [m]: the size of the focal spot.
 *  @param dish   either kind, with some spread (the sun's own is always there)
 *  @param share  of the reflected light, 0.01 to 0.999 [-]
 *  Range   else DomainError out_of_range; no_convergence where not even a circle as wide as two focal lengths takes that
 *          share: very rough mirrors, or rim angles beyond 90°
 *  Error   of `interceptFactor`, whose inverse it is */
export function focalSpotDiameter(dish: Dish, share: number): number {
	requireWithin("share of the reflected light", share, 0.01, 0.999);
	const excess = (radius: number): number => interceptFactor(dish, radius) - share;
	return 2 * bracketedRoot(excess, 0, dish.focalLength, TOLERANCE * dish.focalLength);
}
