import { describe, expect, it } from "vitest";
import { FLUID_IDS, fluidById } from "../../../src/fluids/catalogue.ts";
import { fluidMethods } from "../../../src/fluids/methods.ts";
import { evenTemperatures, propertyTable } from "../../../src/fluids/property-table.ts";

describe("even temperatures", () => {
	it("reach both ends, the last step the nearer", () => {
		expect(evenTemperatures(273, 303, 10)).toEqual([273, 283, 293, 303]);
		expect(evenTemperatures(273, 299, 10)).toEqual([273, 283, 293, 299]);
		expect(evenTemperatures(273, 273, 10)).toEqual([273]);
		const fine = evenTemperatures(273.15, 373.15, 0.1);
		expect(fine).toHaveLength(1001);
		expect(fine.at(-1)).toBeCloseTo(373.15, 9);
	});
	it("refuse what runs backwards, has no step or no end", () => {
		expect(() => evenTemperatures(300, 290, 1)).toThrow("rows of the table");
		expect(() => evenTemperatures(290, 300, 0)).toThrow("rows of the table");
		expect(() => evenTemperatures(290, 300, 1e-3)).toThrow("rows of the table");
		expect(() => evenTemperatures(290, Number.NaN, 1)).toThrow("rows of the table");
	});
});

describe.each(FLUID_IDS)("the table of %s", (id) => {
	const fluid = fluidById(id);
	const table = propertyTable(fluid, evenTemperatures(...fluid.range, 5));
	it("has columns of one length, positive throughout", () => {
		for (const column of Object.values(table)) {
			expect(column).toHaveLength(table.temperature.length);
			for (const value of column) expect(value).toBeGreaterThan(0);
		}
	});
	it("thins as it warms, and joins its columns by their definitions", () => {
		table.viscosity.forEach((viscosity, i) => {
			if (i > 0) expect(viscosity).toBeLessThan(table.viscosity[i - 1]!);
			expect(table.kinematicViscosity[i]! * table.density[i]!).toBeCloseTo(viscosity, 12);
			const Prandtl = (viscosity * table.heatCapacity[i]!) / table.conductivity[i]!;
			expect(table.Prandtl[i]! / Prandtl).toBeCloseTo(1, 12);
		});
	});
	it("ends where the fluid's properties do", () => {
		for (const beyond of [fluid.range[0] - 0.01, fluid.range[1] + 0.01, Number.NaN])
			expect(() => propertyTable(fluid, [beyond])).toThrow(fluid.name);
	});
	it("says where it is stretched", () => {
		const flags = (celsius: readonly number[]) =>
			fluidMethods(
				fluid,
				celsius.map((t) => t + 273.15),
			).map(({ outsideRange }) => outsideRange);
		expect(flags([20, 60, 90])).not.toContain(true);
		expect(flags([-80])).toContain(true);
	});
});

it("takes viscosity along Walther's curve, not along a chord", () => {
	const { kinematicViscosity } = propertyTable(fluidById("mineralOilVg32"), [313.15, 343.15, 373.15]);
	const [at40, at70, at100] = kinematicViscosity as [number, number, number];
	expect(at70).toBeLessThan(0.6 * ((at40 + at100) / 2));
});
