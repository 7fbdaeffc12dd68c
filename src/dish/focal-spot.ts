import { requireWithin } from "../errors.ts";
import { bracketedRoot } from "../numeric/root.ts";
import type { Dish } from "./dish.ts";
import { type DishSpots, dishSpots, interceptFactor, shareWithin } from "./intercept.ts";
import { reflectedShare } from "./optics.ts";

const PEAK_RADIUS = 3e-5; // of the focal length: a hundredth of the sun's own spread, within which the peak is constant to 1e-4
const TOLERANCE = 1e-7; // of the focal length

/** Diameter of the circle about the focus that receives a given share of the reflected light [m]: the size of the focal spot.
 *  @param dish   either kind, with some spread (that of the sun is always included)
 *  @param share  of the reflected light, 0.01 to 0.999 [-]
 *  Range   else DomainError out_of_range; no_convergence where a circle with a diameter of two focal lengths does not receive that
 *          share: for very rough mirrors, or rim angles beyond 90°
 *  Error   that of `interceptFactor`, of which it is the inverse */
export function focalSpotDiameter(dish: Dish, share: number): number {
	return circleOfShare(dishSpots(dish), dish.focalLength, share);
}

function circleOfShare(spots: DishSpots, focalLength: number, share: number): number {
	requireWithin("dish.lightShare", share, 0.01, 0.999);
	const excess = (radius: number): number => shareWithin(spots, radius) - share;
	return 2 * bracketedRoot(excess, 0, focalLength, TOLERANCE * focalLength);
}

/** Share of the reflected light per square metre at the centre of the spot [1/m²].
 *  Multiplied by the reflected power it is the greatest irradiance in the focal plane.
 *  @param dish  either kind
 *  Error   that of `interceptFactor`; 1e-4 from averaging over a small circle. Larger waves of the mirror, which concentrate the
 *          light locally, are neglected: spots twice as bright are usual (common practice, no source)
 *  Check   1/(2πσ²f²) for a long focal length   tests/unit/dish/focal-spot.test.ts */
export function focalSpotPeak(dish: Dish): number {
	const radius = PEAK_RADIUS * dish.focalLength;
	return interceptFactor(dish, radius) / (Math.PI * radius * radius);
}

/** Greatest irradiance in the focal plane [W/m²].
 *  @param power  of the beam on the aperture of the dish [W]
 *  Error   that of `focalSpotPeak` */
export function focalPeakIrradiance(dish: Dish, power: number): number {
	return power * reflectedShare(dish) * focalSpotPeak(dish);
}

/** One circle of the focal spot. */
export interface SpotCircle {
	readonly share: number; // of the reflected light
	readonly diameter: number; // [m]
}

/** Circles that receive given shares of the reflected light; shares that need a circle wider than two focal lengths are omitted. */
export function focalSpotCircles(dish: Dish, shares: readonly number[]): readonly SpotCircle[] {
	const spots = dishSpots(dish);
	const most = shareWithin(spots, dish.focalLength);
	return shares
		.filter((share) => share <= most)
		.map((share) => ({ share, diameter: circleOfShare(spots, dish.focalLength, share) }));
}
