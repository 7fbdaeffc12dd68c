import { requireWithin } from "../errors.ts";
import { bracketedRoot } from "../numeric/root.ts";
import type { Dish } from "./dish.ts";
import { type DishSpots, dishSpots, interceptFactor, shareWithin } from "./intercept.ts";
import { reflectedShare } from "./optics.ts";

const PEAK_RADIUS = 3e-5; // of the focal length: a hundredth of the sun's own spread, over which the peak is flat to 1e-4
const TOLERANCE = 1e-7; // of the focal length

/** Diameter of the circle about the focus that takes a given share of the reflected light [m]: the size of the focal spot.
 *  @param dish   either kind, with some spread (the sun's own is always there)
 *  @param share  of the reflected light, 0.01 to 0.999 [-]
 *  Range   else DomainError out_of_range; no_convergence where not even a circle as wide as two focal lengths takes that
 *          share: very rough mirrors, or rim angles beyond 90°
 *  Error   of `interceptFactor`, whose inverse it is */
export function focalSpotDiameter(dish: Dish, share: number): number {
	return circleOfShare(dishSpots(dish), dish.focalLength, share);
}

function circleOfShare(spots: DishSpots, focalLength: number, share: number): number {
	requireWithin("dish.lightShare", share, 0.01, 0.999);
	const excess = (radius: number): number => shareWithin(spots, radius) - share;
	return 2 * bracketedRoot(excess, 0, focalLength, TOLERANCE * focalLength);
}

/** Share of the reflected light that falls on each square metre at the middle of the spot [1/m²].
 *  Times the reflected power it is the greatest irradiance in the plane of the focus.
 *  @param dish  either kind
 *  Error   of `interceptFactor`; 1e-4 from the small circle it is taken over. The mirror's own larger waves, which heap the
 *          light up in places, are left out: spots twice as bright are usual (common practice, no source)
 *  Check   1/(2πσ²f²) for a long focal length   tests/unit/dish/focal-spot.test.ts */
export function focalSpotPeak(dish: Dish): number {
	const radius = PEAK_RADIUS * dish.focalLength;
	return interceptFactor(dish, radius) / (Math.PI * radius * radius);
}

/** Greatest irradiance in the plane of the focus [W/m²].
 *  @param power  of the beam on the dish's aperture [W]
 *  Error   of `focalSpotPeak` */
export function focalPeakIrradiance(dish: Dish, power: number): number {
	return power * reflectedShare(dish) * focalSpotPeak(dish);
}

/** One circle of the focal spot. */
export interface SpotCircle {
	readonly share: number; // of the reflected light
	readonly diameter: number; // [m]
}

/** The circles that take these shares of the reflected light, those left out that no circle of two focal lengths takes. */
export function focalSpotCircles(dish: Dish, shares: readonly number[]): readonly SpotCircle[] {
	const spots = dishSpots(dish);
	const most = shareWithin(spots, dish.focalLength);
	return shares
		.filter((share) => share <= most)
		.map((share) => ({ share, diameter: circleOfShare(spots, dish.focalLength, share) }));
}
