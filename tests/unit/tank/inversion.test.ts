import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { mixInversions } from "../../../src/tank/inversion.ts";
import { sum } from "./a-tank.ts";

const mixed = (energies: readonly number[]) => {
	const copy = Float64Array.from(energies);
	mixInversions(copy);
	return Array.from(copy);
};

describe("mixInversions", () => {
	it("leaves a stable tank as it is", () => {
		expect(mixed([5, 4, 4, 1])).toEqual([5, 4, 4, 1]);
	});

	it("pools a cold lid with what lies warmer below it, and only that", () => {
		expect(mixed([1, 5, 3, 2])).toEqual([3, 3, 3, 2]);
		expect(mixed([9, 1, 5, 2])).toEqual([9, 3, 3, 2]);
	});

	it("reaches back through groups that were pooled before", () => {
		expect(mixed([2, 4, 1, 9])).toEqual([4, 4, 4, 4]);
	});

	it("keeps the sum, ends stable, and stays within the extremes, whatever it is given", () => {
		fc.assert(
			fc.property(
				fc.array(fc.double({ min: 1e3, max: 1e7, noNaN: true }), { minLength: 1, maxLength: 20 }),
				(e) => {
					const after = mixed(e);
					expect(Math.abs(sum(after) - sum(e))).toBeLessThanOrEqual(1e-13 * sum(e));
					for (let i = 1; i < after.length; i++)
						expect(after[i]!).toBeLessThanOrEqual(after[i - 1]! * (1 + 1e-14));
					expect(Math.max(...after)).toBeLessThanOrEqual(Math.max(...e) * (1 + 1e-14));
					expect(Math.min(...after)).toBeGreaterThanOrEqual(Math.min(...e) * (1 - 1e-14));
				},
			),
		);
	});
});
