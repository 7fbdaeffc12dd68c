import type { OffsetPolarDish, TwoAxisDish } from "../../../src/dish/dish.ts";

/** A perfect two-axis dish of 1.8 m, to be spread over in the tests. */
export const perfectDish: TwoAxisDish = {
	kind: "twoAxis",
	diameter: 1.8,
	focalLength: 0.675,
	reflectance: 1,
	cleanliness: 1,
	blockedFraction: 0,
	slopeError: 0,
	specularity: 0,
	trackingError: 0,
	lowestAltitude: 0,
};

/** A perfect off-axis dish on a polar axis with a mirror of 8 m². */
export const perfectOffsetPolar: OffsetPolarDish = {
	kind: "offsetPolar",
	mirrorArea: 8,
	focalLength: 3,
	reflectance: 1,
	cleanliness: 1,
	blockedFraction: 0,
	slopeError: 0,
	specularity: 0,
	trackingError: 0,
	lowestAltitude: 0,
};
