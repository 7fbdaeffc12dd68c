import { z } from "@hono/zod-openapi";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { eightDigits, wireValue } from "../../../../api/wire/rounding.ts";

describe("eightDigits", () => {
	it("is the number nearest to its first eight digits", () => {
		const finite = fc.double({ noNaN: true, noDefaultInfinity: true });
		fc.assert(
			fc.property(finite, (x) => {
				const expected = Number.isInteger(x) ? x : Number(x.toPrecision(8));
				// a tie between two eighth digits may fall either way: the product rounds before it is cut
				return (
					Math.abs(eightDigits(x) - expected) <= Math.abs(expected) * 1.01e-7 && digits(eightDigits(x)) <= 8
				);
			}),
			{ seed: 3, numRuns: 5000 },
		);
	});

	it.each([
		[89.97228816, 89.972288],
		[0.1 + 0.2, 0.3],
		[99999999.9, 1e8],
		[9.99999999, 10],
		[-1234.56789012, -1234.5679],
		[1e-20, 1e-20],
		[1.23456789e-18, 1.2345679e-18],
		[1_700_000_000, 1_700_000_000],
		[1234567890.5, 1234567900],
	])("%d → %d", (x, rounded) => {
		expect(eightDigits(x)).toBe(rounded);
	});

	it("agrees with decimal rounding wherever there is no tie", () => {
		const ordinary = fc.double({ min: 1e-6, max: 1e7, noNaN: true });
		fc.assert(
			fc.property(ordinary, (x) => Number.isInteger(x) || eightDigits(x) === Number(x.toPrecision(8))),
			{ seed: 5, numRuns: 20_000 },
		);
	});
});

function digits(x: number): number {
	if (Number.isInteger(x)) return 1;
	return x
		.toExponential()
		.replace(/e.*$|[-.]/g, "")
		.replace(/0+$/, "").length;
}

describe("wireValue", () => {
	const Schema = z.strictObject({ a: z.number(), list: z.array(z.number()), word: z.string().optional() });

	it("rounds everywhere and leaves the caller's value alone", () => {
		const value = { a: 1 / 3, list: [2 / 3] };
		expect(wireValue(Schema, value)).toEqual({ a: 0.33333333, list: [0.66666667] });
		expect(value.a).toBe(1 / 3);
		expect(value.list[0]).toBe(2 / 3);
	});

	it.each([
		{ a: Number.NaN, list: [] },
		{ a: 1, list: [Number.POSITIVE_INFINITY] },
		{ a: 1, list: [], stray: 1 },
		{ a: 1 },
		{ a: null, list: [] },
	])("lets no %o out", (value) => {
		expect(() => wireValue(Schema, value)).toThrow();
	});
});
