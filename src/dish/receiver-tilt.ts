import type { Dish } from "./dish.ts";

/** How far a dish's receiver looks down from the level [rad], 0 to π/2: what its free convection hangs on.
 *  On two axes the receiver turns with the dish and looks away from the sun, down by the sun's altitude. At a fixed focus it
 *  looks along the polar axis at the mirror, which stands on the ground: down by the latitude, all day and year.
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
