import { describe, expect, it } from "vitest";
import {
	flatReceiverConcentration,
	sphericalReceiverConcentration,
	thermodynamicConcentrationLimit,
} from "../../../src/dish/concentration-limit.ts";
import { offsetPolarAperture } from "../../../src/dish/offset-polar.ts";
import { depth, focalLengthAtRimAngle, mirrorArea, rimAngle } from "../../../src/dish/paraboloid.ts";
import { gaussLegendre } from "../../../src/numeric/gauss-legendre.ts";

describe("paraboloid", () => {
	it.each([30, 45, 60, 90, 120])("focal length and rim angle are each other's inverse at %f°", (degrees) => {
		const angle = (degrees * Math.PI) / 180;
		expect(rimAngle(1.4, focalLengthAtRimAngle(1.4, angle))).toBeCloseTo(angle, 14);
	});

	it("mirror area is the surface of revolution, integrated numerically", () => {
		const steps = 20_000;
		let area = 0;
		for (let i = 0; i < steps; i++) {
			const r = ((i + 0.5) * 0.9) / steps;
			area += 2 * Math.PI * r * Math.hypot(1, r / (2 * 0.675)) * (0.9 / steps);
		}
		expect(mirrorArea(1.8, 0.675)).toBeCloseTo(area, 8);
	});

	it("tends to the flat disc for a long focus", () => {
		expect(mirrorArea(2, 1e6)).toBeCloseTo(Math.PI, 10);
		expect(depth(2, 1e6)).toBeLessThan(1e-6);
	});
});

describe("concentration limits", () => {
	it("no receiver beats the second law at any rim angle", () => {
		const half = 4.65e-3;
		const limit = thermodynamicConcentrationLimit(half);
		for (let angle = 0.05; angle < Math.PI / 2 - half; angle += 0.05) {
			expect(flatReceiverConcentration(angle, half)).toBeLessThan(limit / 4);
			expect(sphericalReceiverConcentration(angle, half)).toBeLessThan(limit / 4);
		}
	});
});

describe("aperture of an off-axis dish on a polar axis", () => {
	it("swaps summer and winter across the equator", () => {
		const june = (23.45 * Math.PI) / 180;
		expect(offsetPolarAperture(8, -0.5, june)).toBe(offsetPolarAperture(8, 0.5, -june));
		expect(offsetPolarAperture(8, 0.5, june)).toBeLessThan(offsetPolarAperture(8, 0.5, 0));
	});
});

describe("Gauss–Legendre rule", () => {
	it.each([1, 2, 3, 8, 12])("of %i points is exact for every power it should be", (count) => {
		const { points, weights } = gaussLegendre(count);
		for (let power = 0; power < 2 * count; power++) {
			let sum = 0;
			for (let i = 0; i < count; i++) sum += weights[i]! * points[i]! ** power;
			expect(sum).toBeCloseTo(1 / (power + 1), 14);
		}
	});
});
