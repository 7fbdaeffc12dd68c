import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { apertureArea, dishOptics } from "../../../src/dish/optics.ts";
import { perfectDish, perfectOffsetPolar } from "./mirror.ts";

const fraction = fc.double({ min: 0, max: 1, noNaN: true });

describe("dish optics", () => {
	it("shares of the beam sum to 1 and none is negative", () => {
		fc.assert(
			fc.property(
				fraction,
				fraction,
				fraction,
				fraction,
				(reflectance, cleanliness, blockedFraction, size) => {
					const dish = { ...perfectDish, slopeError: 8e-3, reflectance, cleanliness, blockedFraction };
					const { shares } = dishOptics(dish, 0.01 + 0.3 * size, 0, 0);
					const all = Object.values(shares);
					expect(Math.abs(all.reduce((sum, share) => sum + share, 0) - 1)).toBeLessThanOrEqual(1e-15);
					for (const share of all) expect(share).toBeGreaterThanOrEqual(0);
				},
			),
			{ seed: 1 },
		);
	});

	it("delivers everything from a perfect dish to an endless receiver", () => {
		const optics = dishOptics(perfectDish, Number.POSITIVE_INFINITY, 0, 0);
		expect(optics.shares.toReceiver).toBeCloseTo(1, 12);
		expect(optics.geometricConcentration).toBe(0);
	});

	it("each loss answers to its own cause alone", () => {
		const { shares } = dishOptics(
			{ ...perfectDish, blockedFraction: 0.1, reflectance: 0.8, cleanliness: 0.9 },
			1,
			0,
			0,
		);
		expect(shares.blocked).toBeCloseTo(0.1, 12);
		expect(shares.mirror).toBeCloseTo(0.9 * 0.2, 12);
		expect(shares.soiling).toBeCloseTo(0.9 * 0.8 * 0.1, 12);
		expect(shares.spillage).toBeCloseTo(0, 9);
	});

	it("counts concentration on the aperture that the beam sees", () => {
		expect(dishOptics(perfectDish, 0.09, 0, 0).geometricConcentration).toBeCloseTo(400, 9);
		const winter = (-23.45 * Math.PI) / 180;
		expect(apertureArea(perfectOffsetPolar, 0.4, winter)).toBeGreaterThan(
			apertureArea(perfectOffsetPolar, 0.4, 0),
		);
		expect(apertureArea(perfectDish, 0.4, winter)).toBe(apertureArea(perfectDish, 0, 0));
	});
});
