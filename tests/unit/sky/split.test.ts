import { describe, expect, it } from "vitest";
import { beamFromDiffuse, diffuseFraction, splitGlobal } from "../../../src/sky/split.ts";

describe("diffuseFraction", () => {
	it("is all under a black sky, falls with clearness, and ends at 0.165", () => {
		expect(diffuseFraction(0)).toBe(1);
		for (let k = 0; k < 0.79; k += 0.01)
			expect(diffuseFraction(k + 0.01)).toBeLessThanOrEqual(diffuseFraction(k));
		expect(diffuseFraction(1.3)).toBe(0.165);
	});

	it("joins its pieces within 0.001", () => {
		expect(Math.abs(diffuseFraction(0.22) - diffuseFraction(0.220001))).toBeLessThan(0.001);
		expect(Math.abs(diffuseFraction(0.8) - diffuseFraction(0.800001))).toBeLessThan(0.001);
	});

	it("refuses a negative clearness and NaN", () => {
		expect(() => diffuseFraction(-0.01)).toThrow("clearness");
		expect(() => diffuseFraction(Number.NaN)).toThrow("clearness");
	});
});

describe("splitGlobal", () => {
	it("closes on the global, and keeps the beam below the extraterrestrial, for any reading at any altitude", () => {
		for (const global of [0, 5, 200, 800, 1400])
			for (let h = -0.2; h < 1.57; h += 0.02) {
				const { beam, diffuse } = splitGlobal(global, 1361, h);
				expect(beam * Math.max(0, Math.sin(h)) + diffuse).toBeCloseTo(global, 9);
				expect(beam).toBeGreaterThanOrEqual(0);
				expect(beam).toBeLessThanOrEqual(0.835 * 1361 + 1e-9);
				expect(diffuse).toBeGreaterThanOrEqual(0);
			}
	});

	it("gives no beam with the sun under 3° or down", () => {
		expect(splitGlobal(40, 1361, 0.05)).toEqual({ beam: 0, diffuse: 40 });
		expect(splitGlobal(2, 1361, -0.1)).toEqual({ beam: 0, diffuse: 2 });
	});

	it("refuses a negative reading and NaN", () => {
		expect(() => splitGlobal(-1, 1361, 0.01)).toThrow("global");
		expect(() => splitGlobal(Number.NaN, 1361, 1)).toThrow("global");
	});
});

describe("beamFromDiffuse", () => {
	it("undoes the sum of beam and diffuse", () => {
		expect(beamFromDiffuse(850 * Math.sin(0.6) + 70, 70, 1361, 0.6)).toBeCloseTo(850, 9);
	});

	it("keeps readings at odds within what is possible", () => {
		expect(beamFromDiffuse(60, 70, 1361, 0.6)).toBe(0);
		expect(beamFromDiffuse(1400, 0, 1361, 0.2)).toBe(1361);
		expect(beamFromDiffuse(60, 20, 1361, 0.05)).toBe(0);
	});
});
