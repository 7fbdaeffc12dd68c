import type { Dish } from "./dish.ts";
import { offsetPolarAperture } from "./offset-polar.ts";
import { rimAngle } from "./paraboloid.ts";

/** Half-angle of the cone of light at the focus of a dish, about the axis that the receiver faces [rad], 0 to π.
 *  On two axes it is the rim angle. An off-axis dish on a polar axis has an inclined cone: as built, its edges are 22 to 36° off that axis at
 *  equinox. It is replaced by the symmetric cone, 28°, from a disc of its aperture at its distance.
 *  Error   of an off-axis dish on a polar axis as built: 0.001 of the light on tubes and 0.003 through a pane; at the shortest focal length allowed 0.003 and 0.02
 *  Check   rays from the off-axis mirror   tests/unit/dish/light-cone.test.ts */
export function lightCone(dish: Dish): number {
	switch (dish.kind) {
		case "twoAxis":
			return rimAngle(dish.diameter, dish.focalLength);
		case "offsetPolar":
			return rimAngle(2 * Math.sqrt(offsetPolarAperture(dish.mirrorArea, 0, 0) / Math.PI), dish.focalLength);
		default:
			return dish satisfies never;
	}
}
