import { describe, expect, it } from "vitest";
import { air } from "../../../src/fluids/air.ts";

describe("air", () => {
	it("is thinner at altitude and conducts as well", () => {
		const low = air(293.15, 101_325);
		const high = air(293.15, 70_108);
		expect(high.density / low.density).toBeCloseTo(70_108 / 101_325, 12);
		expect(high.kinematicViscosity / low.kinematicViscosity).toBeCloseTo(101_325 / 70_108, 12);
		expect(high.conductivity).toBe(low.conductivity);
		expect(high.viscosity).toBe(low.viscosity);
		expect(high.prandtl).toBe(low.prandtl);
	});

	it("joins its properties by their definitions", () => {
		const a = air(400, 90_000);
		expect(a.kinematicViscosity * a.density).toBeCloseTo(a.viscosity, 15);
		expect((a.prandtl * a.conductivity) / a.heatCapacity).toBeCloseTo(a.viscosity, 15);
		expect(a.expansion).toBe(1 / 400);
	});

	it("is finite and monotone from 150 to 1500 K", () => {
		for (let t = 160; t <= 1500; t += 10) {
			const [cooler, warmer] = [air(t - 10, 101_325), air(t, 101_325)];
			expect(warmer.conductivity).toBeGreaterThan(cooler.conductivity);
			expect(warmer.kinematicViscosity).toBeGreaterThan(cooler.kinematicViscosity);
			expect(warmer.heatCapacity).toBeGreaterThan(990);
			expect(warmer.heatCapacity).toBeLessThan(1150);
			expect(warmer.prandtl).toBeGreaterThan(0.65);
			expect(warmer.prandtl).toBeLessThan(0.8);
		}
	});

	it("has the heat capacity of rigid molecules and a little vibration", () => {
		// Limit of a rigid diatomic gas: cp = 7/2 R; nitrogen and oxygen vibrate at 3374 K and 2256 K (Herzberg 1950,
		// value from memory)
		const einstein = (u: number) => (u * u * Math.exp(u)) / (Math.exp(u) - 1) ** 2;
		for (const t of [200, 300, 500, 800, 1000]) {
			const vibration = 0.7808 * einstein(3374 / t) + 0.2095 * einstein(2256 / t);
			const capacity = 287.05287 * (3.5 * 0.9907 + 2.5 * 0.0093 + vibration);
			expect(Math.abs(air(t, 101_325).heatCapacity / capacity - 1)).toBeLessThan(0.006);
		}
	});

	it("passes on what is not a number", () => {
		expect(air(Number.NaN, 101_325).density).toBeNaN();
		expect(air(Number.NaN, 101_325).prandtl).toBeNaN();
		expect(air(300, Number.NaN).kinematicViscosity).toBeNaN();
	});
});
