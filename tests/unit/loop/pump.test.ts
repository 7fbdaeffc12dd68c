import { describe, expect, it } from "vitest";
import { mineralOil } from "../../../src/fluids/mineral-oil.ts";
import { segmentPressureDrop } from "../../../src/loop/flow.ts";
import type { Pump } from "../../../src/loop/loop.ts";
import { pumpDuty } from "../../../src/loop/pump.ts";

const pump: Pump = {
	flow: 1e-4,
	electricPower: 40,
	efficiency: 0.25,
	heatToFluid: 0.4,
	maximumPressure: 200_000,
	casingLossCoefficient: 0.5,
	heldHeatCapacity: 2000,
};

describe("pump duty", () => {
	it("gives its set flow on an easy circuit, for one evaluation", () => {
		let calls = 0;
		const duty = pumpDuty(pump, (q) => {
			calls++;
			return 3e8 * q;
		});
		expect(calls).toBe(1);
		expect(duty.flow).toBe(1e-4);
		expect(duty.pressure).toBe(30_000);
		expect(duty.hydraulicPower).toBeCloseTo(3, 12);
		expect(duty.starved).toBe(0);
	});
	it("meets the closed form where power binds: p = R q, so q = √(P η/R)", () => {
		const duty = pumpDuty(pump, (q) => 2e9 * q);
		expect(Math.abs(duty.flow / Math.sqrt(10 / 2e9) - 1)).toBeLessThan(1e-5);
		expect(duty.hydraulicPower).toBeCloseTo(10, 3);
		expect(duty.electricPower).toBeCloseTo(40, 3);
	});
	it("meets the closed form where head binds: q = p_max/R", () => {
		const duty = pumpDuty(pump, (q) => 1e10 * q);
		expect(Math.abs(duty.flow / 2e-5 - 1)).toBeLessThan(1e-5);
		expect(duty.starved).toBeCloseTo(0.8, 5);
	});
	it("never passes a limit, and its energy adds up", () => {
		for (let resistance = 1e8; resistance < 1e13; resistance *= 1.5) {
			const duty = pumpDuty(pump, (q) => resistance * q ** 1.4);
			expect(duty.pressure).toBeLessThanOrEqual(pump.maximumPressure * 1.00001);
			expect(duty.hydraulicPower).toBeLessThanOrEqual(10.0001);
			expect(duty.electricPower).toBeLessThanOrEqual(40.0001);
			expect(duty.heatToFluid).toBeLessThanOrEqual(duty.electricPower);
			expect(duty.heatToFluid).toBeGreaterThanOrEqual(duty.hydraulicPower);
		}
	});
	it("has no step in flow where the limit begins to bind", () => {
		const at = (resistance: number) => pumpDuty(pump, (q) => resistance * q).flow;
		expect(at(1e9 * 1.0001) / at(1e9)).toBeCloseTo(1, 3);
	});
	it("starves on cold oil", () => {
		const oil = mineralOil(32);
		const flowAt = (temperature: number) =>
			pumpDuty(pump, (q) =>
				segmentPressureDrop(
					{
						length: 40,
						innerDiameter: 0.013,
						roughness: 1.5e-6,
						helixRatio: 0,
						density: oil.density(temperature),
						viscosity: oil.viscosity(temperature),
					},
					q,
				),
			).flow;
		expect(flowAt(373.15)).toBe(pump.flow);
		expect(flowAt(283.15)).toBeLessThan(0.5 * pump.flow);
		expect(flowAt(273.15)).toBeLessThan(flowAt(283.15));
		expect(flowAt(273.15)).toBeGreaterThan(0);
	});
	it("stands still without power or head", () => {
		for (const dead of [
			{ ...pump, electricPower: 0 },
			{ ...pump, maximumPressure: 0 },
		]) {
			const duty = pumpDuty(dead, (q) => 1e8 * q);
			expect(duty.flow).toBe(0);
			expect(duty.pressure).toBe(0);
			expect(duty.starved).toBe(1);
		}
	});
	it("refuses a circuit without a pressure", () => {
		expect(() => pumpDuty(pump, () => Number.NaN)).toThrow(expect.objectContaining({ code: "out_of_range" }));
	});
});
