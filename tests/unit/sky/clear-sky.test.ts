import { describe, expect, it } from "vitest";
import { absoluteAirMass } from "../../../src/sky/air-mass.ts";
import { standardPressure } from "../../../src/sky/atmosphere.ts";
import { clearSky, TURBIDITY_CLASSES } from "../../../src/sky/clear-sky.ts";

const at = (turbidity: number, elevation: number, altitude: number) =>
	clearSky(turbidity, elevation, altitude, absoluteAirMass(altitude, standardPressure(elevation)), 1361.1);

describe("clearSky", () => {
	it("closes and is never negative nor brighter than outside, over its whole range", () => {
		for (const turbidity of [1, 2, 3, 5.5, 12])
			for (const elevation of [-400, 0, 1800, 4000, 5500])
				for (let altitude = 0.0005; altitude < 1.57; altitude += 0.01) {
					const { beam, global, diffuse } = at(turbidity, elevation, altitude);
					expect(beam).toBeGreaterThanOrEqual(0);
					expect(beam).toBeLessThan(1361.1);
					expect(diffuse).toBeGreaterThanOrEqual(0);
					expect(beam * Math.sin(altitude) + diffuse).toBeCloseTo(global, 9);
				}
	});

	it("gives less beam through hazier air, more on a mountain and more with a higher sun", () => {
		expect(at(4, 0, 0.7).beam).toBeLessThan(at(3, 0, 0.7).beam);
		expect(at(3, 2000, 0.7).beam).toBeGreaterThan(at(3, 0, 0.7).beam);
		for (let h = 0.01; h < 1.5; h += 0.02)
			expect(at(3, 500, h + 0.02).beam).toBeGreaterThan(at(3, 500, h).beam);
	});

	it("stays below Meinel & Meinel's beam at 3 km, where their formula is an upper bound for ordinary clear air", () => {
		expect(at(3, 3000, Math.PI / 2).beam).toBeLessThan(1118);
		expect(at(3, 3000, Math.PI / 6).beam).toBeLessThan(1012);
	});

	it("is dark with the sun on or below the horizon", () => {
		for (const altitude of [0, -0.001, -1])
			expect(clearSky(3, 0, altitude, 38, 1361)).toEqual({ beam: 0, global: 0, diffuse: 0 });
	});

	it("refuses what it does not cover, and NaN", () => {
		expect(() => clearSky(0.5, 0, 1, 1, 1361)).toThrow("turbidity");
		expect(() => clearSky(Number.NaN, 0, 1, 1, 1361)).toThrow("turbidity");
		expect(() => clearSky(3, 20_000, 1, 1, 1361)).toThrow("elevation");
		expect(() => clearSky(3, 0, Number.NaN, 1, 1361)).toThrow("apparentAltitude");
	});
});

describe("TURBIDITY_CLASSES", () => {
	it("runs from clear to hazy within the model's range", () => {
		const rows = Object.values(TURBIDITY_CLASSES);
		for (const [i, row] of rows.entries()) {
			expect(row.turbidity).toBeGreaterThan(rows[i - 1]?.turbidity ?? 1);
			expect(row.turbidity).toBeLessThan(7);
		}
	});
});
