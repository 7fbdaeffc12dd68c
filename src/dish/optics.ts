import type { Dish } from "./dish.ts";
import { interceptFactor } from "./intercept.ts";
import { offsetPolarAperture } from "./offset-polar.ts";
import { mirrorArea } from "./paraboloid.ts";

/** Shares of the beam on the aperture by their cause, in the order in which the light meets them; their sum is 1. */
export interface OpticalShares {
	readonly blocked: number;
	readonly mirror: number; // absorbed or scattered by the clean mirror
	readonly soiling: number;
	readonly spillage: number; // past the receiver's aperture
	readonly toReceiver: number; // through the receiver's aperture
}

/** Optical result of a dish. */
export interface DishOptics {
	readonly apertureArea: number; // normal to the beam [m²]
	readonly mirrorArea: number; // [m²]
	readonly interceptFactor: number;
	readonly geometricConcentration: number; // aperture over the receiver's aperture
	readonly shares: OpticalShares;
}

/** Aperture of a dish, normal to the beam [m²].
 *  @param latitude,declination  [rad]; they matter only for an off-axis dish on a polar axis, which is reshaped by season */
export function apertureArea(dish: Dish, latitude: number, declination: number): number {
	switch (dish.kind) {
		case "twoAxis":
			return (Math.PI * dish.diameter * dish.diameter) / 4;
		case "offsetPolar":
			return offsetPolarAperture(dish.mirrorArea, latitude, declination);
		default:
			return dish satisfies never;
	}
}

/** Area of the mirror's surface [m²]. */
function reflectingArea(dish: Dish): number {
	switch (dish.kind) {
		case "twoAxis":
			return mirrorArea(dish.diameter, dish.focalLength);
		case "offsetPolar":
			return dish.mirrorArea;
		default:
			return dish satisfies never;
	}
}

/** Share of the beam on the aperture that the mirror reflects towards the focus, including spillage [-]. */
export function reflectedShare(dish: Dish): number {
	return (1 - dish.blockedFraction) * dish.reflectance * dish.cleanliness;
}

/** Optics of a dish that faces the sun, with a receiver in its focus.
 *  @param dish                      either kind, facing the sun
 *  @param receiverApertureDiameter  [m]; Infinity for no spillage
 *  @param latitude,declination      [rad], as `apertureArea`
 *  Assumes  blocking affects all rings equally; soiling and reflectance affect all angles equally
 *  Source   Stine & Geyer, Power from the Sun, ch. 8 (the product of factors, from memory) */
export function dishOptics(
	dish: Dish,
	receiverApertureDiameter: number,
	latitude: number,
	declination: number,
): DishOptics {
	const area = apertureArea(dish, latitude, declination);
	const intercept = interceptFactor(dish, receiverApertureDiameter / 2);
	const reached = 1 - dish.blockedFraction;
	const reflected = reached * dish.reflectance;
	const clean = reflected * dish.cleanliness;
	return {
		apertureArea: area,
		mirrorArea: reflectingArea(dish),
		interceptFactor: intercept,
		geometricConcentration: (4 * area) / (Math.PI * receiverApertureDiameter * receiverApertureDiameter),
		shares: {
			blocked: dish.blockedFraction,
			mirror: reached * (1 - dish.reflectance),
			soiling: reflected * (1 - dish.cleanliness),
			spillage: clean * (1 - intercept),
			toReceiver: clean * intercept,
		},
	};
}
