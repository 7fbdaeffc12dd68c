import { describe, expect, it } from "vitest";
import { offAxisIntercept, TOLERANCE, twoAxisIntercept } from "./traced-gap.ts";

// The corners of the sweep in ray-trace.slow.test.ts.
const cases = [2e-3, 20e-3].flatMap((slopeError) =>
	[0.3, 1.0].map((ratio) => ({ slopeError, ratio, spreads: 1.6 })),
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
		[2.7, 2, 5e-3, 0.03],
		[10, 2.2, 20e-3, 0.1],
	])(
		"off-axis: %f m² at %f m, slope %f rad, radius %f m",
		(mirrorArea, focalLength, slopeError, receiverRadius) => {
			const { formula, traced } = offAxisIntercept(mirrorArea, focalLength, slopeError, receiverRadius);
			expect(Math.abs(formula - traced)).toBeLessThan(TOLERANCE);
		},
	);
});
