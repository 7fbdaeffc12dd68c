import { describe, expect, it } from "vitest";
import { fittedLine } from "../../../src/receiver/fitted-line.ts";

describe("fitted line", () => {
	it("finds the line that points lie on", () => {
		const line = fittedLine([0, 20, 50, 90], [600, 520, 400, 240], 1000)!;
		expect(line.zeroLossEfficiency).toBeCloseTo(0.6, 12);
		expect(line.lossCoefficient).toBeCloseTo(4, 12);
		expect(line.worstDeviation).toBeLessThan(1e-12);
	});

	it("meets Anscombe's first set, whose line is 3.00 + 0.500 x", () => {
		// Anscombe, Graphs in statistical analysis, The American Statistician 27 (1973) 17–21
		const x = [10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5];
		const y = [8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68];
		const line = fittedLine(x, y, 1)!;
		expect(line.zeroLossEfficiency).toBeCloseTo(3.0, 2);
		expect(-line.lossCoefficient).toBeCloseTo(0.5, 3);
		expect(line.worstDeviation).toBeCloseTo(1.921, 2); // of the third point: 7.58 against 9.50
	});

	it("needs two different temperatures and some light", () => {
		expect(fittedLine([40, 40], [500, 500], 1000)).toBeUndefined();
		expect(fittedLine([40], [500], 1000)).toBeUndefined();
		expect(fittedLine([40, 60], [500, 400], 0)).toBeUndefined();
	});
});
