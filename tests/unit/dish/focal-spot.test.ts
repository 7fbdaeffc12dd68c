import { describe, expect, it } from "vitest";
import { focalSpotDiameter } from "../../../src/dish/focal-spot.ts";
import { interceptFactor } from "../../../src/dish/intercept.ts";
import { perfectDish, perfectFixedFocus } from "./mirror.ts";

describe("focal spot", () => {
	it("takes the share it was asked for", () => {
		for (const dish of [perfectDish, { ...perfectDish, slopeError: 8e-3 }, perfectFixedFocus])
			for (const share of [0.5, 0.9, 0.95])
				expect(interceptFactor(dish, focalSpotDiameter(dish, share) / 2)).toBeCloseTo(share, 5);
	});

	it("of a long perfect mirror is the sun's Gaussian image: 2·σ·f·√(2 ln 10) for nine tenths", () => {
		const long = { ...perfectDish, focalLength: 1000 };
		expect(focalSpotDiameter(long, 0.9)).toBeCloseTo(2 * 2.73 * Math.sqrt(2 * Math.log(10)), 3);
	});

	it("has no answer where the light cannot come: beyond a rim angle of 90°, or a share of 1", () => {
		expect(() => focalSpotDiameter({ ...perfectDish, focalLength: 0.2 }, 0.95)).toThrow("same sign");
		expect(() => focalSpotDiameter(perfectDish, 1)).toThrow("must lie within");
		expect(() => focalSpotDiameter(perfectDish, Number.NaN)).toThrow("must lie within");
	});
});
