import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { coilFits, coilHeldHeatCapacity, coilShares } from "../../../src/coil/geometry.ts";
import { water } from "../../../src/fluids/water.ts";
import { aCoil } from "./a-coil.ts";

const total = (shares: Float64Array) => shares.reduce((a, b) => a + b, 0);

describe("coilShares", () => {
	it("shares the length by overlap of heights", () => {
		const shares = Array.from(coilShares(aCoil({ bottom: 0, top: 0.5 }), 4));
		expect(shares).toEqual([0, 0, 0.5, 0.5]);
		const part = coilShares(aCoil({ bottom: 0.1, top: 0.6 }), 2);
		expect(part[0]).toBeCloseTo(0.2, 12);
		expect(part[1]).toBeCloseTo(0.8, 12);
	});

	it("sums to one with no share below zero, wherever the coil stands", () => {
		const unit = fc.double({ min: 0, max: 1, noNaN: true });
		fc.assert(
			fc.property(unit, unit, fc.integer({ min: 1, max: 30 }), (a, b, layers) => {
				const shares = coilShares(aCoil({ bottom: Math.min(a, b), top: Math.max(a, b) }), layers);
				expect(total(shares)).toBeCloseTo(1, 6);
				for (const share of shares) expect(share).toBeGreaterThanOrEqual(0);
			}),
		);
	});

	it("puts a flat spiral into the layer of its height", () => {
		expect(Array.from(coilShares(aCoil({ bottom: 0, top: 0 }), 3))).toEqual([0, 0, 1]);
		expect(Array.from(coilShares(aCoil({ bottom: 1, top: 1 }), 3))).toEqual([1, 0, 0]);
	});

	it("refuses a coil upside down or out of the tank", () => {
		expect(() => coilShares(aCoil({ bottom: 0.6, top: 0.4 }), 5)).toThrow("above its top");
		expect(() => coilShares(aCoil({ top: 1.2 }), 5)).toThrow("highest height");
		expect(() => coilShares(aCoil({ bottom: Number.NaN }), 5)).toThrow("lowest height");
	});
});

describe("coilFits", () => {
	const vessel = { fill: 0.15, diameter: 0.4 };

	it("winds turns that use the tube up", () => {
		const fit = coilFits(aCoil({}), vessel);
		if (fit.outcome !== "fits") throw new Error("expected a fit");
		expect(fit.turns * Math.hypot(Math.PI * 0.3, fit.pitch)).toBeCloseTo(12, 9);
		expect(fit.turns * fit.pitch).toBeCloseTo((0.45 * 0.15) / (Math.PI * 0.04), 9);
	});

	it("takes just the longest that it names, with turns side by side", () => {
		const refused = coilFits(aCoil({ length: 500 }), vessel);
		if (refused.outcome !== "tooLong") throw new Error("expected too long");
		const longest = coilFits(aCoil({ length: refused.longest }), vessel);
		if (longest.outcome !== "fits") throw new Error("expected a fit");
		expect(longest.pitch).toBeCloseTo(0.015, 9);
	});

	it("refuses a helix wider than the tank leaves room for", () => {
		expect(coilFits(aCoil({ coilDiameter: 0.39 }), vessel)).toEqual({ outcome: "tooWide", widest: 0.385 });
	});
});

describe("coilHeldHeatCapacity", () => {
	it("adds copper and water", () => {
		const water12m = ((Math.PI * 0.013 ** 2) / 4) * 12 * 988.05 * 4179.6; // at 50 °C, IAPWS
		const copper = ((Math.PI * (0.015 ** 2 - 0.013 ** 2)) / 4) * 12 * 3.45e6;
		expect(coilHeldHeatCapacity(aCoil({}), water, 323.15) / (water12m + copper)).toBeCloseTo(1, 3);
	});
});
