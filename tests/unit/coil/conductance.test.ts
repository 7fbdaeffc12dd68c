import { describe, expect, it } from "vitest";
import type { Coil } from "../../../src/coil/coil.ts";
import { coilConductances, coilFilmOutsideRange } from "../../../src/coil/conductance.ts";
import { coilShares } from "../../../src/coil/geometry.ts";
import type { Fluid } from "../../../src/fluids/fluid.ts";
import { water, waterExpansion } from "../../../src/fluids/water.ts";
import { nusseltHorizontalCylinder } from "../../../src/heat/natural-convection.ts";
import { bracketedRoot } from "../../../src/numeric/root.ts";
import { aCoil } from "./a-coil.ts";

const FLOW = 1e-4; // [m³/s]

function conductances(coil: Coil, fluid: Fluid, oil: number, flow: number, layers: Float64Array) {
	const out = new Float64Array(layers.length).fill(Number.NaN);
	coilConductances(coil, 1, coilShares(coil, layers.length), fluid, oil, flow, layers, out);
	return out;
}
const whole = (coil: Coil, fluid: Fluid, oil: number, flow: number, tank: number) =>
	conductances(coil, fluid, oil, flow, new Float64Array([tank]))[0]!;

/** A liquid that carries heat from core to wall without hindrance, so that only wall and outside film resist. */
const perfect: Fluid = { ...water, conductivity: () => 1e9 };

describe("coilConductances", () => {
	it.each([
		[345, 330],
		[400, 285],
		[300, 345],
		[331, 330],
	])("meets the outside film solved to the end (coil %d K, water %d K)", (oil, tank) => {
		const tube = aCoil({ wallConductivity: 0.4 });
		const within = Math.log(15 / 13) / (2 * Math.PI * 0.4);
		const outside = (excess: number) => {
			const film = tank + excess / 2;
			const nu = water.viscosity(film) / water.density(film);
			const alpha = water.conductivity(film) / (water.density(film) * water.heatCapacity(film));
			const difference = Math.hypot(excess, 0.1);
			const Ra = (9.80665 * waterExpansion(film) * difference * 0.015 ** 3) / (nu * alpha);
			return Math.PI * water.conductivity(film) * nusseltHorizontalCylinder(Ra, nu / alpha);
		};
		const balance = (excess: number) => (oil - tank - excess) / within - outside(excess) * excess;
		const excess = bracketedRoot(balance, Math.min(0, oil - tank), Math.max(0, oil - tank), 1e-9);
		const settled = 12 / (within + 1 / outside(excess));
		expect(Math.abs(whole(tube, perfect, oil, FLOW, tank) / settled - 1)).toBeLessThan(0.01);
	});

	it("comes to the gap of a double wall when that is all that resists", () => {
		const gap = whole(aCoil({ gapResistance: 1 }), water, 345, FLOW, 330);
		expect(gap / (Math.PI * 0.015 * 12)).toBeGreaterThan(0.99);
		expect(gap / (Math.PI * 0.015 * 12)).toBeLessThan(1);
	});

	it("comes to a wall of poor plastic when that is all that resists", () => {
		const plastic = whole(aCoil({ wallConductivity: 1e-4 }), water, 345, FLOW, 330);
		const alone = (2 * Math.PI * 1e-4 * 12) / Math.log(15 / 13);
		expect(plastic / alone).toBeCloseTo(1, 2);
	});

	it("comes to the still film, Nu 3.66, of a poor conductor at rest", () => {
		const tar: Fluid = { ...water, conductivity: () => 1e-4 };
		const rest = whole(aCoil({}), tar, 345, 0, 330);
		expect(rest / (Math.PI * 3.66 * 1e-4 * 12)).toBeCloseTo(1, 3);
	});

	it("joins flow to rest without a gap", () => {
		const slow = whole(aCoil({}), water, 345, 1e-12, 330);
		expect(slow / whole(aCoil({}), water, 345, 0, 330)).toBeCloseTo(1, 9);
	});

	it("grows with flow, with length, and with the difference that drives the water", () => {
		const base = whole(aCoil({}), water, 345, FLOW, 330);
		expect(whole(aCoil({}), water, 345, 2 * FLOW, 330)).toBeGreaterThan(base);
		expect(whole(aCoil({ length: 24 }), water, 345, FLOW, 330)).toBeCloseTo(2 * base, 9);
		expect(whole(aCoil({}), perfect, 360, FLOW, 330)).toBeGreaterThan(
			whole(aCoil({}), perfect, 335, FLOW, 330),
		);
	});

	it("sees the inside film suffer where the wall is colder and the oil thicker", () => {
		const oil: Fluid = {
			...water,
			conductivity: () => 0.13,
			heatCapacity: () => 2000,
			density: () => 850,
			viscosity: (t) => 0.02 * Math.exp(-0.04 * (t - 333)),
		};
		const even: Fluid = { ...oil, viscosity: () => 0.02 };
		expect(whole(aCoil({}), oil, 333, FLOW, 285)).toBeLessThan(whole(aCoil({}), even, 333, FLOW, 285));
	});

	it("does not depend on how finely an even tank is layered", () => {
		const ten = conductances(aCoil({}), water, 345, FLOW, new Float64Array(10).fill(330));
		const one = whole(aCoil({}), water, 345, FLOW, 330);
		expect(ten.reduce((a, b) => a + b, 0) / one).toBeCloseTo(1, 2);
	});

	it("gives nothing to layers beside the coil", () => {
		const out = conductances(aCoil({}), water, 345, FLOW, new Float64Array(10).fill(330));
		expect(Array.from(out.slice(0, 5))).toEqual([0, 0, 0, 0, 0]);
		for (const ua of out.slice(5)) expect(ua).toBeGreaterThan(0);
	});

	it.each([0, 1e-6, 0.01, 0.1, 1])("is smooth where coil and water are %d K apart", (difference) => {
		const up = whole(aCoil({}), water, 330 + difference, FLOW, 330);
		const down = whole(aCoil({}), water, 330 - difference, FLOW, 330);
		expect(up).toBeGreaterThan(0);
		expect(Math.abs(up / down - 1)).toBeLessThan(0.03 * difference + 1e-9);
	});

	it("still conducts at 4 °C, where water does not expand", () => {
		expect(whole(aCoil({}), water, 277.2, FLOW, 277.1)).toBeGreaterThan(1);
	});
});

describe("coilFilmOutsideRange", () => {
	it("flags what was not measured: warm water in laminar flow, but not at rest", () => {
		expect(coilFilmOutsideRange(aCoil({}), water, 345, 1e-6)).toBe(true);
		expect(coilFilmOutsideRange(aCoil({}), water, 345, 0)).toBe(false);
		expect(coilFilmOutsideRange(aCoil({}), water, 345, 3e-4)).toBe(false);
	});
});
