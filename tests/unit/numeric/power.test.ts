import { expect, it } from "vitest";
import { cube, power } from "../../../src/numeric/power.ts";

it.each([
	[2, 10],
	[0.3, 2.47],
	[1e5, 0.8],
	[101_325, 1 / 5.2559],
	[45, -1.6364],
	[1e-12, 0.45],
	[1e7, 0.293],
])("%d to the power of %d is what the engine says, but for the last bits", (x, y) => {
	const bound = (2 + Math.abs(y * Math.log(x))) * 1.2e-16;
	expect(Math.abs(power(x, y) / x ** y - 1)).toBeLessThan(bound);
});

it("is exact where nothing is left to round", () => {
	expect(power(1, 5.2559)).toBe(1);
	expect(power(0, 1.849)).toBe(0);
	expect(power(Number.POSITIVE_INFINITY, 1.36)).toBe(Number.POSITIVE_INFINITY);
	expect(power(Number.POSITIVE_INFINITY, -1.36)).toBe(0);
	expect([cube(-3), cube(0), cube(0.5)]).toEqual([-27, 0, 0.125]);
});

it("has no value below 0", () => expect(power(-1, 0.5)).toBeNaN());
