import type { Dish } from "./dish.ts";

/** Angle by which the receiver of a dish faces below the horizontal [rad], 0 to π/2; its free convection depends on it.
 *  On two axes the receiver moves with the dish and faces away from the sun, down by the altitude of the sun. At a fixed focus it
 *  faces the mirror on the ground along the polar axis: down by the latitude, at all times.
 *  @param latitude  of the site [rad]     @param altitude  of the sun, counted as 0 below the horizon [rad] */
export function receiverTilt(dish: Dish, latitude: number, altitude: number): number {
	switch (dish.kind) {
		case "twoAxis":
			return Math.max(0, altitude);
		case "offsetPolar":
			return Math.abs(latitude);
		default:
			return dish satisfies never;
	}
}
