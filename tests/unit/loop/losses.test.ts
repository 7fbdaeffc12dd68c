import { describe, expect, it } from "vitest";
import { mineralOil } from "../../../src/fluids/mineral-oil.ts";
import type { Loop, Pipe } from "../../../src/loop/loop.ts";
import { type LoopConditions, loopLosses } from "../../../src/loop/losses.ts";
import { pipeInsideFilm } from "../../../src/loop/pipe-flow.ts";
import { pipeRun } from "../../../src/loop/pipe-run.ts";

const pipe: Pipe = {
	length: 10,
	innerDiameter: 0.013,
	outerDiameter: 0.015,
	wallConductivity: 380,
	wallHeatCapacity: 3.45e6,
	roughness: 1.5e-6,
	insulation: { material: "mineralWool", thickness: 0.03, moisture: 0, surfaceEmittance: 0.9 },
};
const loop: Loop = {
	fluid: mineralOil(32),
	supply: pipe,
	return: pipe,
	fittingsLossFactor: 10,
	fittingsLossCoefficient: 0.5,
	pump: {
		flow: 4e-3 / 60,
		electricPower: 40,
		efficiency: 0.25,
		heatToFluid: 0.4,
		maximumPressure: 200_000,
		casingLossCoefficient: 0.3,
		heldHeatCapacity: 2000,
	},
	control: { startDifference: 8, stopDifference: 3, highLimit: 363, oilLimit: 433, hysteresis: 5 },
	expansionVolume: 2e-3,
};
const conditions: LoopConditions = {
	supplyTemperature: 403.15,
	returnTemperature: 373.15,
	ambient: 293.15,
	wind: 2,
	pressure: 80_000,
	others: [],
};
const asked = { addedThicknesses: [0.01, 0.02], moisture: 0.05, coverEmittance: 0.2 };

describe("a pipe in steady flow", () => {
	const weather = { ambient: 293.15, wind: 2, pressure: 80_000 };
	it("agrees with the same pipe cut into a hundred", () => {
		const whole = pipeRun(pipe, loop.fluid, { inletTemperature: 403.15, flow: 2e-5, ...weather });
		let temperature = 403.15;
		const massFlow = 2e-5 * loop.fluid.density(403.15);
		for (let i = 0; i < 100; i++) {
			// a short piece would gain an entrance film, so its length is not cut but its place is
			const flow = massFlow / loop.fluid.density(temperature);
			const piece = pipeRun(pipe, loop.fluid, { inletTemperature: temperature, flow, ...weather });
			temperature -= (piece.loss.perMetre * 0.1) / (massFlow * loop.fluid.heatCapacity(temperature));
		}
		expect(Math.abs((403.15 - temperature) / whole.temperatureDrop - 1)).toBeLessThan(0.03);
	});
	it("never leaves colder than the air, however slow", () => {
		const run = pipeRun(pipe, loop.fluid, { inletTemperature: 403.15, flow: 1e-10, ...weather });
		expect(run.outletTemperature).toBeGreaterThanOrEqual(293.15 - 1e-6);
		expect(run.outletTemperature).toBeLessThan(293.2);
	});
	it("loses nothing at the air's temperature", () => {
		expect(pipeRun(pipe, loop.fluid, { inletTemperature: 293.15, flow: 2e-5, ...weather }).heatLoss).toBe(0);
	});
	it("has the film of conduction at rest", () => {
		expect(
			(pipeInsideFilm(pipe, loop.fluid, 373.15, 0) * 0.013) / loop.fluid.conductivity(373.15),
		).toBeCloseTo(3.66, 10);
	});
});

describe("losses of a loop", () => {
	const losses = loopLosses(loop, conditions, asked);
	it("add up", () => {
		const { supply, return: back, fittings, pump } = losses;
		expect(losses.heatLoss).toBeCloseTo(
			supply.heatLoss + back.heatLoss + fittings.heatLoss + pump.casingLoss,
			9,
		);
		expect(losses.netHeatLoss).toBeCloseTo(losses.heatLoss - pump.heatToFluid, 9);
		expect(supply.heatLoss).toBeGreaterThan(back.heatLoss);
		expect(Math.abs(supply.heatLoss / (supply.loss.perMetre * 10) - 1)).toBeLessThan(0.005);
		const pressure = supply.pressureDrop + back.pressureDrop + fittings.pressureDrop;
		expect(Math.abs(pump.pressure / pressure - 1)).toBeLessThan(0.05); // taken at the inlets, not at the means
	});
	it("take fittings between the coldest and the hottest fluid, the casing at the end of the return", () => {
		const { supply, return: back, fittings, pump } = losses;
		expect(fittings.heatLoss).toBeGreaterThan(0.5 * (back.outletTemperature - 293.15));
		expect(fittings.heatLoss).toBeLessThan(0.5 * (403.15 - 293.15));
		expect(pump.casingLoss).toBeCloseTo(0.3 * (373.15 - back.temperatureDrop - 293.15), 9);
		expect(supply.outletTemperature).toBeCloseTo(403.15 - supply.temperatureDrop, 9);
	});
	it("save less with each further centimetre, and are more when wet", () => {
		for (const run of [losses.supply, losses.return]) {
			const [first, second] = run.thicker;
			expect(first!.saved).toBeGreaterThan(0);
			expect(second!.saved).toBeGreaterThan(first!.saved);
			expect(second!.saved).toBeLessThan(2 * first!.saved);
			expect(run.wet).toBeGreaterThan(run.dry * 1.1);
			expect(run.dry).toBe(run.heatLoss);
		}
	});
	it("count other tubes for the pump", () => {
		const coil = {
			length: 12,
			innerDiameter: 0.013,
			roughness: 1.5e-6,
			helixRatio: 0.04,
			density: loop.fluid.density(373.15),
			viscosity: loop.fluid.viscosity(373.15),
		};
		const more = loopLosses(loop, { ...conditions, others: [coil] }, asked);
		expect(more.pump.pressure).toBeGreaterThan(losses.pump.pressure * 1.3);
	});
	it("refuse a dead pump", () => {
		const dead: Loop = { ...loop, pump: { ...loop.pump, electricPower: 0 } };
		expect(() => loopLosses(dead, conditions, asked)).toThrow(
			expect.objectContaining({ code: "impossible" }),
		);
	});
});
