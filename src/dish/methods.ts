import type { Citation, Method } from "../methods.ts";
import type { Dish } from "./dish.ts";
import { rimAngle } from "./paraboloid.ts";

export const INTERCEPT_FACTOR: Citation = {
	name: "Intercept factor, Gaussian spread by ring and direction",
	source: "Stine & Geyer, Power from the Sun, ch. 8; Rabl, Active Solar Collectors, 1985",
	confirmed: false, // the width of the sun, Bendt & Rabl
};

const LARGEST_ERROR = 0.03; // [rad] of slope, rays to 20 mrad were traced (tests/unit/dish/ray-trace.test.ts); others likewise

/** What a dish's optics rest on, and where that is stretched: a rim angle beyond 90°, whose outer light counts as missed,
 *  and errors that are no longer small angles. */
export function dishMethods(dish: Dish): readonly Method[] {
	const deep = isDeep(dish);
	const rough = Math.max(dish.slopeError, dish.specularity, dish.trackingError) > LARGEST_ERROR;
	return [apertureMethod(dish), { ...INTERCEPT_FACTOR, outsideRange: deep || rough }];
}

/** Whether the rim angle passes 90°. */
function isDeep(dish: Dish): boolean {
	switch (dish.kind) {
		case "twoAxis":
			return rimAngle(dish.diameter, dish.focalLength) > Math.PI / 2;
		case "offsetPolar":
			return false;
		default:
			return dish satisfies never;
	}
}

/** What the area facing the sun rests on. */
export function apertureMethod(dish: Dish): Method {
	switch (dish.kind) {
		case "twoAxis":
			return {
				name: "Geometry of a paraboloid",
				source: "Rabl, Active Solar Collectors and Their Applications, 1985, ch. 7",
				confirmed: true,
				outsideRange: false,
			};
		case "offsetPolar":
			return {
				name: "Seasonal aperture of an off-axis dish on a polar axis",
				source: "Munir, Hensel & Scheffler, Solar Energy 84 (2010) 1490–1502",
				confirmed: false,
				outsideRange: false,
			};
		default:
			return dish satisfies never;
	}
}
