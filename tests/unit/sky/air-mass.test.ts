import { describe, expect, it } from "vitest";
import { absoluteAirMass, relativeAirMass } from "../../../src/sky/air-mass.ts";

describe("relativeAirMass", () => {
	it("is one overhead and follows 1/sin within 0.5 % above 30°", () => {
		expect(relativeAirMass(Math.PI / 2)).toBeCloseTo(1, 3);
		for (let h = 0.53; h < 1.57; h += 0.05) expect(relativeAirMass(h) * Math.sin(h)).toBeCloseTo(1, 2);
	});

	it("grows as the sun sinks", () => {
		for (let h = 0; h < 1.5; h += 0.01) expect(relativeAirMass(h)).toBeGreaterThan(relativeAirMass(h + 0.01));
	});

	it("refuses a sun below the horizon and NaN", () => {
		expect(() => relativeAirMass(-1e-6)).toThrow("apparentAltitude");
		expect(() => relativeAirMass(Number.NaN)).toThrow("apparentAltitude");
	});
});

describe("absoluteAirMass", () => {
	it("shrinks with the pressure", () => {
		expect(absoluteAirMass(0.5, 50_662.5)).toBeCloseTo(relativeAirMass(0.5) / 2, 12);
	});
});
