import { describe, expect, it } from "vitest";
import { focalSpotCircles, focalSpotDiameter, focalSpotPeak } from "../../../src/dish/focal-spot.ts";
import { interceptFactor } from "../../../src/dish/intercept.ts";
import { perfectDish, perfectOffsetPolar } from "./mirror.ts";

describe("focal spot", () => {
	it("takes the share it was asked for", () => {
		for (const dish of [perfectDish, { ...perfectDish, slopeError: 8e-3 }, perfectOffsetPolar])
			for (const share of [0.5, 0.9, 0.95])
				expect(interceptFactor(dish, focalSpotDiameter(dish, share) / 2)).toBeCloseTo(share, 5);
	});

	it("of a long perfect mirror is the sun's Gaussian image: 2·σ·f·√(2 ln 10) for nine tenths", () => {
		const long = { ...perfectDish, focalLength: 1000 };
		expect(focalSpotDiameter(long, 0.9)).toBeCloseTo(2 * 2.73 * Math.sqrt(2 * Math.log(10)), 3);
	});

	it("has no answer where the light cannot come: beyond a rim angle of 90°, or a share of 1", () => {
		expect(() => focalSpotDiameter({ ...perfectDish, focalLength: 0.2 }, 0.95)).toThrow("same sign");
		expect(() => focalSpotDiameter(perfectDish, 1)).toThrow("must be between");
		expect(() => focalSpotDiameter(perfectDish, Number.NaN)).toThrow("must be between");
	});
});

describe("peak of the focal spot", () => {
	it("is that of a round Gaussian spot where the focal length is long", () => {
		const flat = { ...perfectDish, diameter: 0.1, focalLength: 5, specularity: 6e-3, slopeError: 4e-3 };
		const spread = Math.sqrt(4 * 4e-3 ** 2 + 6e-3 ** 2 + 2.73e-3 ** 2);
		expect(focalSpotPeak(flat) * 2 * Math.PI * (spread * 5) ** 2).toBeCloseTo(1, 3);
	});

	it("is brighter than the mean over any circle, which comes near it as the circle shrinks", () => {
		for (const dish of [
			{ ...perfectDish, slopeError: 5e-3 },
			{ ...perfectOffsetPolar, slopeError: 5e-3 },
		]) {
			const peak = focalSpotPeak(dish);
			let before = 0;
			for (const radius of [0.2, 0.1, 0.05, 0.01, 0.002]) {
				const mean = interceptFactor(dish, radius) / (Math.PI * radius ** 2);
				expect(mean).toBeGreaterThan(before);
				expect(mean).toBeLessThanOrEqual(peak);
				before = mean;
			}
			expect(before / peak).toBeGreaterThan(0.98);
		}
	});
});

describe("circles of the focal spot", () => {
	it("leave out the share that the mirror sends past any", () => {
		const deep = { ...perfectDish, diameter: 2.7, focalLength: 0.3, slopeError: 2e-3 }; // rim angle 132°
		expect(focalSpotCircles(deep, [0.05, 0.9])).toEqual([
			{ share: 0.05, diameter: focalSpotDiameter(deep, 0.05) },
		]);
		expect(
			focalSpotCircles({ ...perfectDish, slopeError: 5e-3 }, [0.5, 0.9]).map(({ share }) => share),
		).toEqual([0.5, 0.9]);
	});
});
