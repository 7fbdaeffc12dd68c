import { describe, expect, it } from "vitest";
import { betweenLimits, byFactor } from "../../../src/uncertainty/spread.ts";

describe("betweenLimits", () => {
	it("has the value as its median and the deviation as its slope there", () => {
		expect(betweenLimits(0.9, [0, 1], 0.02, 0)).toBeCloseTo(0.9, 12);
		const slope = (betweenLimits(0.9, [0, 1], 0.02, 1e-4) - betweenLimits(0.9, [0, 1], 0.02, -1e-4)) / 2e-4;
		expect(slope).toBeCloseTo(0.02, 6);
	});

	it("never leaves its limits, and rises with the score", () => {
		let before = 0;
		for (let score = -6; score <= 6; score += 0.5) {
			const value = betweenLimits(0.98, [0, 1], 0.05, score);
			expect(value).toBeGreaterThan(before);
			expect(value).toBeLessThan(1);
			before = value;
		}
	});

	it("leaves a value at or beyond a limit alone", () => {
		for (const value of [0, 1, 1.2]) expect(betweenLimits(value, [0, 1], 0.1, 2)).toBe(value);
	});
});

describe("byFactor", () => {
	it("errs by the same factor up and down", () => {
		expect(byFactor(5, 0.3, 1) * byFactor(5, 0.3, -1)).toBeCloseTo(25, 12);
		expect(byFactor(5, 0.3, 0)).toBe(5);
	});

	it("spans −41 to +69 % in nine of ten at 0.32", () => {
		expect(byFactor(1, 0.32, -1.645)).toBeCloseTo(0.59, 2); // e^(−0.526), worked by hand
		expect(byFactor(1, 0.32, 1.645)).toBeCloseTo(1.69, 2);
	});
});
