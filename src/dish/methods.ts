import type { Citation, Method } from "../methods.ts";
import type { Dish } from "./dish.ts";
import { rimAngle } from "./paraboloid.ts";

export const INTERCEPT_FACTOR: Citation = {
	name: "Intercept factor, Gaussian spread by ring and direction",
	source: "Stine & Geyer, Power from the Sun, ch. 8; Rabl, Active Solar Collectors, 1985",
	confirmed: false, // the width of the sun, Bendt & Rabl
};

const LARGEST_ERROR = 0.03; // [rad] of slope, rays were traced up to 20 mrad (tests/unit/dish/ray-trace.test.ts); also for the other errors

/** Methods behind the optics of a dish. They are outside their range for a rim angle beyond 90°, where outer light counts as spilled,
 *  and for errors that are not small angles. */
export function dishMethods(dish: Dish): readonly Method[] {
	const deep = isDeep(dish);
	const rough = Math.max(dish.slopeError, dish.specularity, dish.trackingError) > LARGEST_ERROR;
	return [apertureMethod(dish), { ...INTERCEPT_FACTOR, outsideRange: deep || rough }];
}

/** Whether the rim angle exceeds 90°. */
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

/** Method behind the area that faces the sun. */
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
