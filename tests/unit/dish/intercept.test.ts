import { describe, expect, it } from "vitest";
import type { TwoAxisDish } from "../../../src/dish/dish.ts";
import { interceptFactor } from "../../../src/dish/intercept.ts";
import { perfectDish, perfectOffsetPolar } from "./mirror.ts";

const dish: TwoAxisDish = { ...perfectDish, slopeError: 5e-3, specularity: 3e-3, trackingError: 2e-3 };
const offsetPolar = { ...perfectOffsetPolar, slopeError: 5e-3 };
const radii = [0.01, 0.02, 0.04, 0.08, 0.16, 0.32];

/** The same double integral by a plain midpoint rule in Cartesian steps of the ray's two errors, far finer. */
function midpointIntercept(mirror: TwoAxisDish, radius: number): number {
	const rest = mirror.specularity ** 2 + mirror.trackingError ** 2 + 2.73e-3 ** 2;
	const rings = 200;
	const steps = 1500;
	let total = 0;
	for (let i = 0; i < rings; i++) {
		const y = (mirror.diameter / 2) * Math.sqrt((i + 0.5) / rings);
		const phi = 2 * Math.atan(y / (2 * mirror.focalLength));
		const distance = (2 * mirror.focalLength) / (1 + Math.cos(phi));
		const radial = (distance * Math.sqrt(4 * mirror.slopeError ** 2 + rest)) / Math.cos(phi);
		const across = distance * Math.sqrt((2 * mirror.slopeError * Math.cos(phi / 2)) ** 2 + rest);
		const step = (2 * Math.PI) / steps;
		for (let j = 0; j < steps; j++) {
			const angle = (j + 0.5) * step;
			const inverse = (Math.cos(angle) / radial) ** 2 + (Math.sin(angle) / across) ** 2;
			total += (step * -Math.expm1((-radius * radius * inverse) / 2)) / (inverse * radial * across);
		}
	}
	return total / (2 * Math.PI * rings);
}

describe("intercept factor", () => {
	it.each([0.26, 0.3, 0.375, 0.6, 1])("has a quadrature error below 1e-4 at f/D %f", (ratio) => {
		for (const slopeError of [0, 5e-3, 20e-3])
			for (const radius of radii) {
				const mirror = { ...dish, focalLength: ratio * dish.diameter, slopeError };
				expect(Math.abs(interceptFactor(mirror, radius) - midpointIntercept(mirror, radius))).toBeLessThan(
					1e-4,
				);
			}
	});

	it("is that of one ring for a long focus", () => {
		const flat = { ...dish, focalLength: 1000, slopeError: 0, specularity: 0, trackingError: 0 };
		const spread = 2.73e-3 * flat.focalLength;
		expect(interceptFactor(flat, 2 * spread)).toBeCloseTo(1 - Math.exp(-2), 5);
	});

	it.each([["two-axis", dish] as const, ["off-axis", offsetPolar] as const])(
		"%s: grows with the aperture to 1",
		(_, mirror) => {
			const shares = radii.map((radius) => interceptFactor(mirror, radius));
			for (let i = 1; i < shares.length; i++) expect(shares[i]!).toBeGreaterThanOrEqual(shares[i - 1]!);
			expect(interceptFactor(mirror, 0)).toBeCloseTo(0, 12);
			expect(interceptFactor(mirror, Number.POSITIVE_INFINITY)).toBeCloseTo(1, 12);
		},
	);

	it.each(["slopeError", "specularity", "trackingError"] as const)("falls as %s grows", (error) => {
		for (const mirror of [dish, offsetPolar]) {
			const shares = [0, 2e-3, 5e-3, 10e-3, 20e-3].map((value) =>
				interceptFactor({ ...mirror, [error]: value }, 0.05),
			);
			for (let i = 1; i < shares.length; i++) expect(shares[i]!).toBeLessThan(shares[i - 1]!);
		}
	});

	it("does not change when everything is scaled", () => {
		const big = { ...dish, diameter: 3 * dish.diameter, focalLength: 3 * dish.focalLength };
		expect(interceptFactor(big, 0.15)).toBeCloseTo(interceptFactor(dish, 0.05), 12);
		const larger = { ...offsetPolar, mirrorArea: 9 * 8, focalLength: 9 };
		expect(interceptFactor(larger, 0.15)).toBeCloseTo(interceptFactor(offsetPolar, 0.05), 12);
	});

	it("loses the light from beyond a rim angle of 90°, which meets the back of the aperture", () => {
		const deep = { ...dish, focalLength: dish.diameter / 8 }; // f/D 0.125: only a quarter of the aperture lies within 90°
		expect(interceptFactor(deep, Number.POSITIVE_INFINITY)).toBeCloseTo(0.25, 12);
	});

	it("refuses an off-axis mirror that reaches past its focus, and NaN", () => {
		expect(() => interceptFactor({ ...offsetPolar, focalLength: 1.4 }, 0.05)).toThrow("must be between");
		expect(() => interceptFactor({ ...offsetPolar, mirrorArea: Number.NaN }, 0.05)).toThrow(
			"must be between",
		);
	});
});
