import { describe, expect, it } from "vitest";
import { spotShareWithin } from "../../../src/dish/gaussian-spot.ts";

/** The same by brute force over the plane: a fine polar grid of the density itself. */
function summed(varianceA: number, varianceB: number, radius: number): number {
	const rings = 400;
	const angles = 180;
	let share = 0;
	for (let i = 0; i < rings; i++) {
		const r = ((i + 0.5) * radius) / rings;
		for (let j = 0; j < angles; j++) {
			const t = ((j + 0.5) * Math.PI) / (2 * angles);
			const x = r * Math.cos(t);
			const y = r * Math.sin(t);
			share += r * Math.exp(-(x * x) / (2 * varianceA) - (y * y) / (2 * varianceB));
		}
	}
	const cell = (radius / rings) * ((2 * Math.PI) / angles);
	return (share * cell) / (2 * Math.PI * Math.sqrt(varianceA * varianceB));
}

describe("share of a Gaussian spot", () => {
	it.each([1, 1.9, 2, 2.1, 5.9, 6, 6.1, 15, 40])(
		"is that of its density, %d times as wide one way",
		(stretch) => {
			for (const radius of [0.3, 1, 2, 5]) {
				const by = summed(stretch, 1, radius);
				expect(Math.abs(spotShareWithin(stretch, 1, radius) - by)).toBeLessThan(1e-5);
				expect(Math.abs(spotShareWithin(1, stretch, radius) - by)).toBeLessThan(1e-5);
			}
		},
	);

	it("is 1 − exp(−r²/2σ²) for a round one, none within nothing and all within an endless circle", () => {
		expect(spotShareWithin(4, 4, 3)).toBeCloseTo(1 - Math.exp(-9 / 8), 14);
		expect(spotShareWithin(4, 1, 0)).toBe(0);
		expect(spotShareWithin(4, 1, Number.POSITIVE_INFINITY)).toBe(1);
	});
});
