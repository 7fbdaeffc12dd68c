import { describe, expect, it } from "vitest";
import { nusseltCrossFlow, nusseltCrossFlowFading } from "../../../src/heat/cross-flow.ts";
import {
	criticalReynoldsHelical,
	frictionFactorHelical,
	helicalOutsideRange,
	nusseltHelical,
	wallPropertyFactor,
} from "../../../src/heat/helical-coil.ts";
import { nusseltGnielinski, nusseltHausen, nusseltPipe } from "../../../src/heat/internal-flow.ts";
import {
	nusseltHorizontalCylinder,
	nusseltHotPlateDown,
	nusseltHotPlateUp,
	nusseltVerticalPlate,
} from "../../../src/heat/natural-convection.ts";
import { nusseltFlatPlate } from "../../../src/heat/plate-flow.ts";

const outOfRange = expect.objectContaining({ code: "out_of_range" });

/** Greatest step between neighbours on a fine logarithmic walk, relative to the value. */
function greatestStep(f: (x: number) => number, low: number, high: number, steps: number): number {
	let worst = 0;
	let before = f(low);
	for (let i = 1; i <= steps; i++) {
		const value = f(low * (high / low) ** (i / steps));
		worst = Math.max(worst, Math.abs(value - before) / before);
		before = value;
	}
	return worst;
}

/** Whether f never falls on a logarithmic walk. */
function rises(f: (x: number) => number, low: number, high: number): boolean {
	let before = Number.NEGATIVE_INFINITY;
	for (let i = 0; i <= 2000; i++) {
		const value = f(low * (high / low) ** (i / 2000));
		if (value < before) return false;
		before = value;
	}
	return true;
}

describe("inside a straight tube", () => {
	it.each([0.7, 7, 100, 1000])("has no step and never falls, Pr %d", (Pr) => {
		const f = (Re: number) => nusseltPipe(Re, Pr, 0.001);
		expect(greatestStep(f, 1, 1e5, 100_000)).toBeLessThan(0.002);
		expect(rises(f, 1, 1e5)).toBe(true);
	});
	it("is 3.66 at rest, and never below", () => {
		expect(nusseltPipe(0, 100, 0.001)).toBe(3.66);
		expect(nusseltPipe(2300.001, 0.01, 1e-6)).toBeGreaterThanOrEqual(3.66);
		expect(nusseltPipe(4000, 0.01, 1e-6)).toBe(3.66);
		expect(nusseltHausen(0)).toBe(3.66);
	});
	it("meets Lévêque's slope for short tubes within 10 %", () => {
		expect(nusseltHausen(1e4) / (1.615 * 1e4 ** (1 / 3))).toBeCloseTo(1.09, 1);
	});
	it("refuses what it was not made for", () => {
		expect(() => nusseltGnielinski(2000, 7)).toThrow(outOfRange);
		expect(() => nusseltPipe(6e6, 7, 0.001)).toThrow(outOfRange);
		expect(() => nusseltPipe(Number.NaN, 7, 0.001)).toThrow(outOfRange);
		expect(() => nusseltPipe(-1, 7, 0.001)).toThrow(outOfRange);
	});
});

describe("inside a helical tube", () => {
	it.each([5, 50, 500])("has no step at the critical Reynolds number nor at 22 000, Pr %d", (Pr) => {
		for (const ratio of [0.02, 0.05, 0.1]) {
			const f = (Re: number) => nusseltHelical(Re, Pr, ratio);
			expect(greatestStep(f, 20, 1e5, 100_000)).toBeLessThan(0.002);
			expect(rises(f, 20, 1e5)).toBe(true);
		}
	});
	it("never falls below the straight tube's 3.66, at rest or without winding", () => {
		expect(nusseltHelical(0, 1000, 0.05)).toBe(3.66);
		expect(nusseltHelical(1, 1000, 0.05)).toBe(3.66);
		expect(nusseltHelical(1000, 100, 0)).toBe(3.66);
	});
	it("lies between the spread of the published laminar formulas for oil", () => {
		// Schmidt 1967 and Manlapaz & Churchill 1981, worked out apart from this project for d/D 0.04
		for (const [Re, Pr, low, high] of [
			[73, 1057, 8.3, 17.9],
			[517, 176, 12, 31.8],
			[997, 98, 15.5, 39.2],
		] as const) {
			expect(nusseltHelical(Re, Pr, 0.04)).toBeGreaterThan(low);
			expect(nusseltHelical(Re, Pr, 0.04)).toBeLessThan(high);
		}
	});
	it("turns turbulent later than a straight tube, as Ito and Srinivasan say within 9 %", () => {
		expect(criticalReynoldsHelical(0)).toBe(2300);
		for (const ratio of [0.04, 0.0667, 0.1]) {
			expect(criticalReynoldsHelical(ratio) / (2e4 * ratio ** 0.32)).toBeCloseTo(0.97, 1);
			expect(
				Math.abs(criticalReynoldsHelical(ratio) / (2100 * (1 + 12 * Math.sqrt(ratio))) - 1),
			).toBeLessThan(0.09);
		}
	});
	it("tells measured from extrapolated", () => {
		expect(helicalOutsideRange(500, 200, 0.05)).toBe(false);
		expect(helicalOutsideRange(73, 1057, 0.04)).toBe(true);
		expect(helicalOutsideRange(5000, 50, 0.05)).toBe(true);
		expect(helicalOutsideRange(3e4, 3.5, 0.05)).toBe(false);
		expect(helicalOutsideRange(Number.NaN, 200, 0.05)).toBe(true);
	});
	it("raises Nu at a hot, thin-oiled wall and lowers it at a cold one", () => {
		expect(wallPropertyFactor(300, 100)).toBeGreaterThan(1);
		expect(wallPropertyFactor(100, 300)).toBeLessThan(1);
		expect(wallPropertyFactor(100, 100)).toBe(1);
	});
	it("refuses an impossible winding and a NaN", () => {
		expect(() => nusseltHelical(100, 100, 0.6)).toThrow(outOfRange);
		expect(() => nusseltHelical(100, 100, Number.NaN)).toThrow(outOfRange);
		expect(() => nusseltHelical(Number.NaN, 100, 0.05)).toThrow(outOfRange);
	});
});

describe("friction of a helical tube", () => {
	it.each([0.01, 0.05, 0.1])("has no step anywhere, d/D %d", (ratio) => {
		expect(greatestStep((Re) => frictionFactorHelical(Re, ratio), 1, 1e5, 100_000)).toBeLessThan(0.002);
	});
	it("is Poiseuille's in creeping flow, and Blasius's turbulent without winding", () => {
		expect(frictionFactorHelical(10, 0.04)).toBe(6.4);
		expect(frictionFactorHelical(1e4, 0)).toBeCloseTo(0.3164 * 1e4 ** -0.25, 12);
	});
});

describe("outside in wind", () => {
	it("keeps 0.3 of conduction and rises with the wind", () => {
		expect(nusseltCrossFlow(0.3, 0.7)).toBeGreaterThan(0.3);
		expect(rises((Re) => nusseltCrossFlow(Re, 0.7), 0.3, 1e6)).toBe(true);
	});
	it("agrees with Hilpert's measured cylinders", () => {
		// Hilpert 1933, constants of Incropera 6e, table 7.2 (quoted in public copies); air Pr 0.7
		expect(nusseltCrossFlow(2400, 0.7) / (0.683 * 2400 ** 0.466 * 0.7 ** (1 / 3))).toBeCloseTo(1.07, 1);
		expect(nusseltCrossFlow(20_000, 0.7) / (0.193 * 20_000 ** 0.618 * 0.7 ** (1 / 3))).toBeCloseTo(0.99, 1);
	});
	it("refuses creeping flow and NaN", () => {
		expect(() => nusseltCrossFlow(0.2, 0.7)).toThrow(outOfRange);
		expect(() => nusseltCrossFlow(Number.NaN, 0.7)).toThrow(outOfRange);
		expect(() => nusseltFlatPlate(1e5, 0.01)).toThrow(outOfRange);
		expect(() => nusseltFlatPlate(Number.NaN, 0.7)).toThrow(outOfRange);
	});
	it("fades to none at rest without a step", () => {
		expect(nusseltCrossFlowFading(0, 0.7)).toBe(0);
		const seam = 0.2 / 0.7;
		expect(nusseltCrossFlowFading(seam * 0.999_999, 0.7)).toBeCloseTo(
			nusseltCrossFlowFading(seam * 1.000_001, 0.7),
			5,
		);
		expect(nusseltCrossFlowFading(1000, 0.7)).toBe(nusseltCrossFlow(1000, 0.7));
	});
	it("has no step where the plate's layer turns turbulent", () => {
		expect(greatestStep((Re) => nusseltFlatPlate(Re, 0.7), 1e3, 1e7, 100_000)).toBeLessThan(0.001);
	});
});

describe("outside in still air", () => {
	it("keeps the conduction limits of the cylinder and the plate", () => {
		expect(nusseltHorizontalCylinder(0, 0.7)).toBeCloseTo(0.36, 12);
		expect(nusseltVerticalPlate(0, 0.7)).toBeCloseTo(0.825 ** 2, 12);
	});
	it("rises with the Rayleigh number and has no step", () => {
		for (const f of [
			(Ra: number) => nusseltHorizontalCylinder(Ra, 0.7),
			(Ra: number) => nusseltVerticalPlate(Ra, 0.7),
			nusseltHotPlateUp,
			nusseltHotPlateDown,
		]) {
			expect(rises(f, 1, 1e11)).toBe(true);
			expect(greatestStep(f, 1, 1e11, 100_000)).toBeLessThan(0.001);
		}
	});
	it("takes more from a face looking up than from one looking down", () => {
		expect(nusseltHotPlateUp(1e8)).toBeGreaterThan(2 * nusseltHotPlateDown(1e8));
	});
	it("refuses Rayleigh numbers beyond the data, negative or NaN", () => {
		for (const Ra of [2e12, -1, Number.NaN]) {
			expect(() => nusseltHorizontalCylinder(Ra, 0.7)).toThrow(outOfRange);
			expect(() => nusseltVerticalPlate(Ra, 0.7)).toThrow(outOfRange);
			expect(() => nusseltHotPlateUp(Ra)).toThrow(outOfRange);
			expect(() => nusseltHotPlateDown(Ra)).toThrow(outOfRange);
		}
	});
});
