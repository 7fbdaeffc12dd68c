import { expect, it } from "vitest";
import { quantile, spreadOf } from "../../../src/sizing/moments.ts";

const bends = (count: number, first: number, second: number) =>
	Array.from({ length: count }, () => ({ first, second }));

it("adds straight effects in squares", () => {
	const spread = spreadOf(10, [
		{ first: 3, second: 0 },
		{ first: -4, second: 0 },
	]);
	expect(spread).toEqual({ mean: 10, deviation: 5, skewness: 0, excess: 0, bent: 0 });
	expect(quantile(spread, 0.95)).toBeCloseTo(10 + 5 * 1.6449, 2);
});

it("has the moments of chi-square for a sum of squares", () => {
	const spread = spreadOf(0, bends(10, 0, 1)); // k = 10: mean k, variance 2k, skewness √(8/k), excess 12/k
	expect(spread.mean).toBe(10);
	expect(spread.deviation ** 2).toBeCloseTo(20, 12);
	expect(spread.skewness).toBeCloseTo(Math.sqrt(0.8), 12);
	expect(spread.excess).toBeCloseTo(1.2, 12);
	expect(spread.bent).toBe(1);
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
