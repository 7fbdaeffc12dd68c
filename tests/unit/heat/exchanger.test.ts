import { describe, expect, it } from "vitest";
import {
	effectivenessCounterflow,
	effectivenessUniform,
	logMeanDifference,
} from "../../../src/heat/exchanger.ts";

describe("effectiveness", () => {
	it("runs from none to all", () => {
		expect(effectivenessUniform(0)).toBeCloseTo(0, 15);
		expect(effectivenessUniform(Number.POSITIVE_INFINITY)).toBe(1);
		expect(effectivenessCounterflow(0, 0.5)).toBeCloseTo(0, 15);
		expect(effectivenessCounterflow(50, 0.5)).toBeCloseTo(1, 10);
	});
	it("of counterflow becomes that of one uniform side when the other rate is endless", () => {
		for (const ntu of [0.1, 1, 5])
			expect(effectivenessCounterflow(ntu, 0)).toBeCloseTo(effectivenessUniform(ntu), 14);
	});
	it("passes equal capacity rates without a step", () => {
		const equal = effectivenessCounterflow(2, 1);
		for (const spare of [1e-4, 1e-8, 1e-12, 1e-15])
			expect(Math.abs(effectivenessCounterflow(2, 1 - spare) - equal)).toBeLessThan(spare + 1e-14);
	});
	it("agrees with the mean-difference method: heat = UA × LMTD", () => {
		const [ntu, ratio] = [1.7, 0.6];
		const effectiveness = effectivenessCounterflow(ntu, ratio);
		// hot 100 → 100 − 100 ε (the smaller rate), cold 0 → 100 ε C
		const mean = logMeanDifference(100 - 100 * effectiveness * ratio, 100 - 100 * effectiveness);
		expect(ntu * mean).toBeCloseTo(100 * effectiveness, 8);
	});
	it("refuses rates the wrong way round and NaN", () => {
		for (const [ntu, ratio] of [
			[1, 1.1],
			[1, -0.1],
			[-1, 0.5],
			[Number.NaN, 0.5],
		] as const)
			expect(() => effectivenessCounterflow(ntu, ratio)).toThrow(
				expect.objectContaining({ code: "out_of_range" }),
			);
	});
});

describe("logarithmic mean difference", () => {
	it("lies between the geometric and the arithmetic mean, whichever end is named first", () => {
		for (const [a, b] of [
			[10, 20],
			[1, 100],
			[5, 5.0001],
		] as const) {
			expect(logMeanDifference(a, b)).toBeCloseTo(logMeanDifference(b, a), 10);
			expect(logMeanDifference(a, b)).toBeLessThanOrEqual((a + b) / 2);
			expect(logMeanDifference(a, b)).toBeGreaterThanOrEqual(Math.sqrt(a * b) * (1 - 1e-12));
		}
	});
	it("is the difference itself where both ends agree, and none where one end touches", () => {
		expect(logMeanDifference(7, 7)).toBe(7);
		expect(logMeanDifference(7, 7 * (1 + 1e-13))).toBeCloseTo(7, 10);
		expect(logMeanDifference(0, 7)).toBe(0);
	});
	it("refuses crossed temperatures and NaN", () => {
		expect(() => logMeanDifference(-1, 7)).toThrow(expect.objectContaining({ code: "impossible" }));
		expect(() => logMeanDifference(Number.NaN, 7)).toThrow(expect.objectContaining({ code: "impossible" }));
	});
});
