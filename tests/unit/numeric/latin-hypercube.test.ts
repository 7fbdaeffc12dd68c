import { expect, it } from "vitest";
import { latinHypercube } from "../../../src/numeric/latin-hypercube.ts";
import { normalScore } from "../../../src/numeric/normal-score.ts";

const ROWS = 40;
const VARIABLES = 6;

it("draws each variable once from every slice", () => {
	const rows = latinHypercube(3, ROWS, VARIABLES);
	for (let variable = 0; variable < VARIABLES; variable++) {
		const sorted = rows.map((row) => row[variable]!).sort((a, b) => a - b);
		for (let slice = 1; slice < ROWS; slice++) {
			const edge = normalScore(slice / ROWS);
			expect(sorted[slice - 1]!).toBeLessThanOrEqual(edge);
			expect(sorted[slice]!).toBeGreaterThanOrEqual(edge);
		}
	}
});

it("pairs the variables at random", () => {
	const rows = latinHypercube(3, 400, 2);
	const product = rows.reduce((sum, row) => sum + row[0]! * row[1]!, 0) / rows.length;
	expect(Math.abs(product)).toBeLessThan(3 / Math.sqrt(400)); // three standard errors of a correlation of none
});

it("gives the same for the same seed and another for another", () => {
	expect(latinHypercube(1, 10, 3)).toEqual(latinHypercube(1, 10, 3));
	expect(latinHypercube(1, 10, 3)).not.toEqual(latinHypercube(2, 10, 3));
});
