import { describe, expect, it } from "vitest";
import {
	cavityFreeCoefficient,
	cavityFreeCoefficientKoenigMarvin,
	cavityWallArea,
	effectiveCavityAbsorptance,
} from "../../../src/receiver/cavity.ts";
import { nusseltKoenigMarvin, windCoefficientMa } from "../../../src/receiver/cavity-convection.ts";
import { cavity, mild } from "./receivers.ts";

describe("cavity", () => {
	it("absorbs as its wall where it is no deeper than its aperture, and all of it behind a pinhole", () => {
		expect(effectiveCavityAbsorptance(0.8, 1)).toBeCloseTo(0.8, 15);
		expect(effectiveCavityAbsorptance(0.8, 0)).toBe(1);
		expect(effectiveCavityAbsorptance(0, 0.5)).toBe(0);
	});

	it("has the wall of a tin without its lid", () => {
		expect(cavityWallArea(cavity)).toBeCloseTo(0.157, 3); // Ø 0.2 m, 0.2 m deep
	});

	it("keeps its warm air when it looks straight down, by both models", () => {
		const down = { ...mild, altitude: Math.PI / 2 };
		expect(cavityFreeCoefficient(cavity, down)).toBeLessThan(1e-9);
		expect(cavityFreeCoefficientKoenigMarvin(cavity, down)).toBeLessThan(1e-9);
	});

	it("is judged within a factor of two by either model up to 60°", () => {
		for (const altitude of [0, 0.3, 0.6, 1.0])
			for (const wallTemperature of [350, 423, 600]) {
				const now = { ...mild, altitude, wallTemperature };
				const ratio = cavityFreeCoefficientKoenigMarvin(cavity, now) / cavityFreeCoefficient(cavity, now);
				expect(ratio).toBeGreaterThan(0.5);
				expect(ratio).toBeLessThan(2);
			}
	});

	it("by Koenig & Marvin has no step where the tilt function changes over", () => {
		const below = nusseltKoenigMarvin(1e7, Math.PI / 4 - 1e-9, 0.75);
		const above = nusseltKoenigMarvin(1e7, Math.PI / 4 + 1e-9, 0.75);
		expect(above / below).toBeCloseTo(1, 3);
	});

	it("takes less from wind than from buoyancy below 2.5 m/s on the level, more above 5 m/s when it looks down by 60°", () => {
		// Reddy, Veershetty & Vikram, Solar Energy 131 (2016) 183, abstract
		const level = cavityFreeCoefficient(cavity, { ...mild, altitude: 0 });
		expect(windCoefficientMa(2.5)).toBeLessThan(level);
		const steep = cavityFreeCoefficient(cavity, { ...mild, altitude: Math.PI / 3 });
		expect(windCoefficientMa(5)).toBeGreaterThan(steep);
		expect(windCoefficientMa(0)).toBe(0);
	});
});
