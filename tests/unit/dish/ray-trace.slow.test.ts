import { describe, expect, it } from "vitest";
import { offAxisIntercept, TOLERANCE, twoAxisIntercept } from "./traced-gap.ts";

// The whole sweep behind the range that the intercept factor claims: slope errors to 20 mrad, f/D from 0.3 to 1, small and large
// receivers, and the off-axis mirror.
const cases = [2e-3, 5e-3, 10e-3, 20e-3].flatMap((slopeError) =>
	[0.3, 0.4, 0.6, 1.0].flatMap((ratio) => [0.8, 1.6, 2.6].map((spreads) => ({ slopeError, ratio, spreads }))),
);

describe("intercept factor against traced rays", () => {
	it.each(cases)(
		"two-axis: slope $slopeError rad, f/D $ratio, $spreads spreads",
		({ slopeError, ratio, spreads }) => {
			const { formula, traced } = twoAxisIntercept(slopeError, ratio, spreads);
			expect(traced).toBeGreaterThan(0.05);
			expect(traced).toBeLessThan(0.999);
			expect(Math.abs(formula - traced)).toBeLessThan(TOLERANCE);
		},
	);

	it.each([
		[8, 3, 3e-3, 0.03],
		[8, 3, 10e-3, 0.1],
		[2.7, 2, 5e-3, 0.03],
		[10, 2.2, 5e-3, 0.05],
		[10, 2.2, 20e-3, 0.1],
	])(
		"off-axis: %f m² at %f m, slope %f rad, radius %f m",
		(mirrorArea, focalLength, slopeError, receiverRadius) => {
			const { formula, traced } = offAxisIntercept(mirrorArea, focalLength, slopeError, receiverRadius);
			expect(Math.abs(formula - traced)).toBeLessThan(TOLERANCE);
		},
	);
});
