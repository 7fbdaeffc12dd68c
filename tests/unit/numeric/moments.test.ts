import { describe, expect, it } from "vitest";
import { type Effect, logarithmicEffects, quantile, spreadOf } from "../../../src/numeric/moments.ts";

const bends = (count: number, first: number, second: number) =>
	Array.from({ length: count }, () => ({ first, second }));

it("adds straight effects in squares", () => {
	const spread = spreadOf(10, [
		{ first: 3, second: 0 },
		{ first: -4, second: 0 },
	]);
	expect(spread).toEqual({ mean: 10, deviation: 5, skewness: 0, excess: 0, nonlinear: 0 });
	expect(quantile(spread, 0.95)).toBeCloseTo(10 + 5 * 1.6449, 2);
});

it("has the moments of chi-square for a sum of squares", () => {
	const spread = spreadOf(0, bends(10, 0, 1)); // k = 10: mean k, variance 2k, skewness √(8/k), excess 12/k
	expect(spread.mean).toBe(10);
	expect(spread.deviation ** 2).toBeCloseTo(20, 12);
	expect(spread.skewness).toBeCloseTo(Math.sqrt(0.8), 12);
	expect(spread.excess).toBeCloseTo(1.2, 12);
	expect(spread.nonlinear).toBe(1);
});

it.each([
	[0.05, 3.94],
	[0.5, 9.342],
	[0.95, 18.307],
])("meets the chi-square table of ten degrees at %f", (probability, value) => {
	// any table of the chi-square distribution; at a skewness of 0.9 the expansion is good to some hundredths of a deviation
	expect(Math.abs(quantile(spreadOf(0, bends(10, 0, 1)), probability) - value)).toBeLessThan(0.05);
});

it("is a point where nothing has an effect", () => {
	const spread = spreadOf(7, bends(5, 0, 0));
	expect(quantile(spread, 0.05)).toBe(7);
	expect(quantile(spread, 0.95)).toBe(7);
});

describe("effects that multiply", () => {
	const factor = (deviation: number): Effect => ({
		first: 8 * Math.sinh(deviation), // of 8·e^(deviation·z), met at a score up and a score down
		second: 8 * (Math.cosh(deviation) - 1),
	});

	it("add up in the logarithm: a product of lognormals is one itself", () => {
		const logs = logarithmicEffects(8, [factor(0.2), factor(-0.1)])!;
		const [wide, narrow] = logs;
		expect(wide!.first).toBeCloseTo(0.2, 12);
		expect(narrow!.first).toBeCloseTo(-0.1, 12);
		for (const { second } of logs) expect(second).toBeCloseTo(0, 12);
		expect(8 * Math.exp(quantile(spreadOf(0, logs), 0.95))).toBeCloseTo(
			8 * Math.exp(1.645 * Math.sqrt(0.05)),
			2,
		);
	});

	it("may be of a loss as well as of a gain", () => {
		const logs = logarithmicEffects(-8, [{ first: -8 * Math.sinh(0.2), second: -8 * (Math.cosh(0.2) - 1) }])!;
		expect(logs[0]!.first).toBeCloseTo(0.2, 12);
	});

	it("are not taken for such where one alone brings the answer near zero, or is nothing at all", () => {
		expect(logarithmicEffects(1, [{ first: 0.5, second: 0 }])).toBeUndefined();
		expect(logarithmicEffects(0, [{ first: 0, second: 0 }])).toBeUndefined();
		expect(logarithmicEffects(Number.NaN, [{ first: 0.1, second: 0 }])).toBeUndefined();
	});
});
