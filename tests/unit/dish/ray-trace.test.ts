import { describe, expect, it } from "vitest";
import { interceptFactor } from "../../../src/dish/intercept.ts";
import { offsetPolarAperture } from "../../../src/dish/offset-polar.ts";
import { perfectDish, perfectOffsetPolar } from "./mirror.ts";
import { tracedIntercept } from "./trace.ts";

const RAYS = 60_000; // standard deviation of the traced share at most 0.002
const SUN_SPREAD = 2.73e-3; // [rad] per axis
const TOLERANCE = 0.01; // the small-angle step and the rays' noise together

const cases = [2e-3, 5e-3, 10e-3, 20e-3].flatMap((slopeError) =>
	[0.3, 0.4, 0.6, 1.0].flatMap((ratio) => [0.8, 1.6, 2.6].map((spreads) => ({ slopeError, ratio, spreads }))),
);

describe("intercept factor against traced rays", () => {
	it.each(cases)(
		"two-axis: slope $slopeError rad, f/D $ratio, $spreads spreads",
		({ slopeError, ratio, spreads }) => {
			const focalLength = 1.8 * ratio;
			const receiverRadius = spreads * Math.hypot(2 * slopeError, SUN_SPREAD, 3e-3) * focalLength;
			const traced = tracedIntercept(
				{
					focalLength,
					patchRadius: 0.9,
					patchOffset: 0,
					receiverNormal: [0, 0, -1],
					receiverRadius,
					slopeError,
					beamSpread: Math.hypot(SUN_SPREAD, 3e-3),
				},
				RAYS,
				20260101,
			);
			expect(traced).toBeGreaterThan(0.05);
			expect(traced).toBeLessThan(0.999);
			const dish = { ...perfectDish, focalLength, slopeError, specularity: 3e-3 };
			expect(Math.abs(interceptFactor(dish, receiverRadius) - traced)).toBeLessThan(TOLERANCE);
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
			const traced = tracedIntercept(
				{
					focalLength: focalLength / 2,
					patchRadius: Math.sqrt(offsetPolarAperture(mirrorArea, 0, 0) / Math.PI),
					patchOffset: focalLength,
					receiverNormal: [0, 1, 0],
					receiverRadius,
					slopeError,
					beamSpread: SUN_SPREAD,
				},
				RAYS,
				7,
			);
			const dish = { ...perfectOffsetPolar, mirrorArea, focalLength, slopeError };
			expect(Math.abs(interceptFactor(dish, receiverRadius) - traced)).toBeLessThan(TOLERANCE);
		},
	);
});
