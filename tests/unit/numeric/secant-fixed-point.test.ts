import { describe, expect, it } from "vitest";
import { secantFixedPoint } from "../../../src/numeric/secant-fixed-point.ts";

describe("the fixed point by secants", () => {
	it("is the Dottie number for the cosine", () => {
		const found = secantFixedPoint((x) => ({ next: Math.cos(x) }), 0.7, 1e-10); // 0.7390851332151607, OEIS A003957
		expect(found!.next).toBeCloseTo(0.7390851332151607, 10);
	});

	it("returns what was found with it", () => {
		const found = secantFixedPoint((x) => ({ next: 1 + 0.01 * x, square: x * x }), 0, 1e-12)!;
		expect(found.next).toBeCloseTo(1 / 0.99, 12);
		expect(found.square).toBeCloseTo(found.next ** 2, 10);
	});

	it("gives up where the function has no value, is not finite, or does not converge", () => {
		expect(secantFixedPoint(() => undefined, 0, 1e-9)).toBeUndefined();
		expect(secantFixedPoint(() => ({ next: Number.NaN }), 0, 1e-9)).toBeUndefined();
		expect(secantFixedPoint((x) => ({ next: x + 1 }), 0, 1e-9)).toBeUndefined(); // no fixed point at all
	});
});
