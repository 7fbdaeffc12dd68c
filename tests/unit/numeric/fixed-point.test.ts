import { describe, expect, it } from "vitest";
import { fixedPoint } from "../../../src/numeric/fixed-point.ts";

describe("fixed point", () => {
	it("finds the Dottie number, cos x = x", () => {
		// 0.739 085 133 215 16, OEIS A003957
		expect(fixedPoint(Math.cos, 0, 0, 1, 1e-12)).toBeCloseTo(0.73908513321516, 11);
	});
	it("gains digits by leaps where passes alone crawl", () => {
		let passes = 0;
		const slow = (x: number) => {
			passes++;
			return 0.9 * x + 0.1 * Math.SQRT2;
		};
		expect(fixedPoint(slow, 0, 0, 2, 1e-9)).toBeCloseTo(Math.SQRT2, 8);
		expect(passes).toBeLessThan(6);
	});
	it("ends by bracket where passes run apart", () => {
		const apart = (x: number) => 2 - 1.8 * (x - 1) - 0.8 * Math.sin(5 * (x - 1));
		const x = fixedPoint(apart, 0.2, 0, 3, 1e-10);
		expect(apart(x)).toBeCloseTo(x, 8);
	});
	it("takes its bracket in either order, and a start that is the answer", () => {
		expect(fixedPoint(() => -2, 0, 0, -5, 1e-9)).toBe(-2);
		expect(fixedPoint((x) => x, 1, 1, 1, 1e-9)).toBe(1);
	});
	it("refuses a function that is no number", () => {
		expect(() => fixedPoint(() => Number.NaN, 0, 0, 1, 1e-9)).toThrow(
			expect.objectContaining({ code: "no_convergence" }),
		);
	});
});
