import { describe, expect, it } from "vitest";
import { rangeWithin } from "../../../api/cost.ts";

const USUAL_DAY = 600; // steps of a day of ten hours by 120 s, half of them divided once

describe("a range that would outlast its time", () => {
	it.each(["warmUpTank", "rankImprovements"] as const)(
		"is none for a usual day of %s, in the usual time",
		(operation) => {
			expect(() => rangeWithin(20, operation, USUAL_DAY)).not.toThrow();
			expect(() => rangeWithin(20, operation, 100 * USUAL_DAY)).toThrow("Ask without a range");
		},
	);

	it("may take twice as many steps where it may take twice as long", () => {
		let most = 1;
		while (most < 1e6 && isLet(20, most + 1)) most++;
		expect(isLet(40, 2 * most)).toBe(true);
		expect(isLet(40, 2 * most + 2)).toBe(false);
	});
});

function isLet(time: number, steps: number): boolean {
	try {
		rangeWithin(time, "rankImprovements", steps);
		return true;
	} catch {
		return false;
	}
}
