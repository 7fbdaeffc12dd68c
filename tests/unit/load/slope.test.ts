import { describe, expect, it } from "vitest";
import { normalStream } from "../../../src/numeric/random.ts";
import { line, lineBeside } from "../../load/slope.ts";

const x = Array.from({ length: 40 }, (_, i) => i);
const saturating = x.map((value) => 5 * (1 - Math.exp(-value / 15)));

describe("growth in time", () => {
	it("is the slope of a straight line, without error where there is none", () => {
		const found = line(
			x,
			x.map((value) => 3 + 0.25 * value),
		);
		expect(found.slope).toBeCloseTo(0.25, 12);
		expect(found.error).toBeCloseTo(0, 12);
		expect(found.mean).toBeCloseTo(3 + 0.25 * 19.5, 12);
	});

	it("is told apart from what grows along with something else", () => {
		const grown = saturating.map((z) => 40 + 1.5 * z);
		expect(line(x, grown).slope).toBeGreaterThan(0.1);
		expect(lineBeside(x, grown, saturating).slope).toBeCloseTo(0, 12);
		const leaking = grown.map((y, i) => y + 0.02 * x[i]!);
		expect(lineBeside(x, leaking, saturating).slope).toBeCloseTo(0.02, 12);
	});

	it("has the standard error that its points scatter with: two of them hold the truth in about 95 of 100 runs", () => {
		const normal = normalStream(7);
		const runs = Array.from({ length: 400 }, () =>
			lineBeside(
				x,
				x.map((value, i) => 40 + 0.02 * value + 1.5 * saturating[i]! + 0.3 * normal()),
				saturating,
			),
		);
		const held = runs.filter(({ slope, error }) => Math.abs(slope - 0.02) < 2 * error).length;
		expect(held / runs.length).toBeGreaterThan(0.92);
		expect(held / runs.length).toBeLessThan(0.98);
	});
});
