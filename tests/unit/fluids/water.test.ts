import { describe, expect, it } from "vitest";
import { water, waterExpansion } from "../../../src/fluids/water.ts";
import { bracketedRoot } from "../../../src/numeric/root.ts";

describe("waterExpansion", () => {
	it("is negative in ice water, positive in warm", () => {
		expect(waterExpansion(273.15)).toBeLessThan(0);
		expect(waterExpansion(275.15)).toBeLessThan(0);
		expect(waterExpansion(279.15)).toBeGreaterThan(0);
	});

	it("vanishes where water is densest, 3.98 °C", () => {
		const densest = bracketedRoot(waterExpansion, 273.15, 283.15, 1e-9);
		expect(Math.abs(densest - 277.13)).toBeLessThan(0.1); // VSMOW 3.983 °C, Tanaka et al., Metrologia 38 (2001)
	});

	it("is the slope of the density", () => {
		for (const t of [280, 300, 330, 370, 420, 470]) {
			const slope = (water.density(t + 0.01) - water.density(t - 0.01)) / 0.02;
			expect(waterExpansion(t)).toBeCloseTo(-slope / water.density(t), 8);
		}
	});

	it("holds its end values", () => {
		expect(waterExpansion(260)).toBe(waterExpansion(273.15));
		expect(waterExpansion(600)).toBe(waterExpansion(473.15));
	});
});
