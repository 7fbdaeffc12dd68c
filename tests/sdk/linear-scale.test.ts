import * as d3 from "d3-scale";
import fc from "fast-check";
import { expect, it } from "vitest";
import { scaleLinear } from "../../sdk/widget/linear-scale.ts";

// d3-scale is the independent implementation, and draws the same charts in the service. Domains on exact tenths are left out: there
// d3 itself can add or drop an end by a rounding error.
it("scales, widens and marks as d3-scale does", () => {
	const span = fc.tuple(fc.integer({ min: -500, max: 500 }), fc.integer({ min: 1, max: 3000 }));
	fc.assert(
		fc.property(
			span,
			fc.integer({ min: 3, max: 8 }),
			fc.constantFrom(1, 7.3, 0.37),
			([low, wide], count, unit) => {
				const domain: [number, number] = [low / unit, (low + wide) / unit];
				const [own, theirs] = [
					scaleLinear(domain, [300, 20]).nice(count),
					d3.scaleLinear(domain, [300, 20]).nice(count),
				];
				const marks = theirs.ticks(count);
				const found = own.ticks(count);
				expect(found.length).toBe(marks.length);
				for (const [i, mark] of marks.entries()) {
					expect(found[i]).toBeCloseTo(mark, 9);
					expect(own(mark)).toBeCloseTo(theirs(mark), 6);
				}
			},
		),
		{ numRuns: 2000, seed: 7 },
	);
});
