import { describe, expect, it } from "vitest";
import { FLUID_IDS, fluidById } from "../../../src/fluids/catalogue.ts";

const samples = (low: number, high: number, count: number) =>
	Array.from({ length: count }, (_, i) => low + ((high - low) * i) / (count - 1));

describe.each(FLUID_IDS)("%s", (id) => {
	const fluid = fluidById(id);
	const [low, high] = fluid.range;
	const temperatures = samples(low, high, 201);

	it("answers to its own name", () => {
		expect(fluid.id).toBe(id);
		expect(fluid.source?.length).toBeGreaterThan(10);
	});

	it("has properties within the bounds of liquids that carry heat", () => {
		for (const t of temperatures) {
			expect(fluid.density(t)).toBeGreaterThan(690);
			expect(fluid.density(t)).toBeLessThan(1080);
			expect(fluid.heatCapacity(t)).toBeGreaterThan(1600);
			expect(fluid.heatCapacity(t)).toBeLessThan(4500);
			expect(fluid.conductivity(t)).toBeGreaterThan(0.1);
			expect(fluid.conductivity(t)).toBeLessThan(0.7);
			expect(fluid.viscosity(t)).toBeGreaterThan(1e-4);
			expect(fluid.viscosity(t)).toBeLessThan(10);
		}
	});

	it("thins and swells as it warms", () => {
		const start = id === "water" ? 278.15 : low; // water is densest near 4 °C
		const warm = samples(start, high, 201);
		for (let i = 1; i < warm.length; i++) {
			expect(fluid.density(warm[i]!)).toBeLessThan(fluid.density(warm[i - 1]!));
			expect(fluid.viscosity(warm[i]!)).toBeLessThan(fluid.viscosity(warm[i - 1]!));
		}
	});

	it("has an enthalpy of zero at the ice point whose slope is the heat capacity, beyond its range too", () => {
		expect(fluid.enthalpy(273.15)).toBeCloseTo(0, 9);
		for (const t of [low - 30, ...samples(low + 1, high - 1, 41), high + 80]) {
			const slope = (fluid.enthalpy(t + 0.01) - fluid.enthalpy(t - 0.01)) / 0.02;
			expect(Math.abs(slope / fluid.heatCapacity(t) - 1)).toBeLessThan(1e-7);
		}
	});

	it("finds the temperature back from the enthalpy", () => {
		for (const t of [low - 30, ...temperatures, high + 80])
			expect(Math.abs(fluid.temperatureAtEnthalpy(fluid.enthalpy(t)) - t)).toBeLessThan(1e-9);
	});

	it("holds the end values beyond its range", () => {
		for (const property of ["density", "heatCapacity", "conductivity", "viscosity"] as const) {
			expect(fluid[property](low - 40)).toBe(fluid[property](low));
			expect(fluid[property](high + 90)).toBe(fluid[property](high));
		}
	});

	it("passes on what is not a number instead of hiding it", () => {
		expect(fluid.density(Number.NaN)).toBeNaN();
		expect(fluid.viscosity(Number.NaN)).toBeNaN();
		expect(fluid.enthalpy(Number.NaN)).toBeNaN();
		expect(() => fluid.temperatureAtEnthalpy(Number.NaN)).toThrow("no temperature found");
	});

	it("orders its limits: coldest < bulk ≤ film, flash point apart, each with a reason, and a source where it is confirmed", () => {
		const { bulk, coldest, film, flash } = fluid.limits;
		expect(coldest.temperature).toBeLessThan(bulk.temperature);
		expect(bulk.temperature).toBeLessThanOrEqual(film.temperature);
		for (const limit of [bulk, coldest, film, ...(flash ? [flash] : [])]) {
			expect(limit.reason.length).toBeGreaterThan(10);
			if (limit.source === undefined && limit.confirmed)
				expect(["commonPractice", "derived"]).toContain(limit.basis);
			if (limit.basis === "commonPractice") expect(limit.source).toBeUndefined();
		}
	});
});

describe("mineral oils", () => {
	it("are thicker grade by grade at every temperature", () => {
		const grades = FLUID_IDS.filter((id) => id.startsWith("mineral")).map(fluidById);
		for (const t of samples(273.15, 473.15, 21))
			for (let i = 1; i < grades.length; i++)
				expect(grades[i]!.viscosity(t)).toBeGreaterThan(grades[i - 1]!.viscosity(t));
	});

	it("have at 40 °C the kinematic viscosity of their name", () => {
		for (const grade of [22, 32, 46, 68] as const) {
			const oil = fluidById(`mineralOilVg${grade}`);
			expect((1e6 * oil.viscosity(313.15)) / oil.density(313.15)).toBeCloseTo(grade, 9);
		}
	});
});

describe("propylene glycol", () => {
	it("gets thicker, denser and a poorer carrier of heat with more glycol, and freezes later", () => {
		const [weak, middle, strong] = ([25, 40, 50] as const).map((p) => fluidById(`propyleneGlycol${p}`));
		for (const t of samples(273.15, 373.15, 21))
			for (const [a, b] of [
				[weak!, middle!],
				[middle!, strong!],
			] as const) {
				expect(b.density(t)).toBeGreaterThan(a.density(t));
				expect(b.viscosity(t)).toBeGreaterThan(a.viscosity(t));
				expect(b.heatCapacity(t)).toBeLessThan(a.heatCapacity(t));
				expect(b.conductivity(t)).toBeLessThan(a.conductivity(t));
			}
		expect(strong!.limits.coldest.temperature).toBeLessThan(middle!.limits.coldest.temperature);
		expect(middle!.limits.coldest.temperature).toBeLessThan(weak!.limits.coldest.temperature);
	});
});

describe("vegetable oil", () => {
	it("meets the standard for rapeseed oil as fuel: at most 36 mm²/s at 40 °C, 910–925 kg/m³ at 15 °C", () => {
		// DIN 51605 (quoted in a public copy)
		const oil = fluidById("vegetableOil");
		expect((1e6 * oil.viscosity(313.15)) / oil.density(313.15)).toBeLessThan(36);
		expect(oil.density(288.15)).toBeGreaterThan(910);
		expect(oil.density(288.15)).toBeLessThan(925);
	});
});
