import { describe, expect, it } from "vitest";
import { water } from "../../../src/fluids/water.ts";
import { insulationMaterial } from "../../../src/heat/insulation.ts";
import type { Pipe } from "../../../src/loop/loop.ts";
import {
	criticalRadius,
	type PipeConditions,
	pipeHeatLoss,
	pipeHeldHeat,
	pipeLossPass,
	shellResistance,
} from "../../../src/loop/pipe.ts";

const lagged = (thickness: number, moisture: number): Pipe => ({
	length: 20,
	innerDiameter: 0.02,
	outerDiameter: 0.022,
	wallConductivity: 380,
	wallHeatCapacity: 3.45e6,
	roughness: 1.5e-6,
	insulation: { material: "mineralWool", thickness, moisture, surfaceEmittance: 0.9 },
});
const oilAt = (fluidTemperature: number): PipeConditions => ({
	fluidTemperature,
	insideFilm: 100,
	ambient: 293.15,
	wind: 1,
	pressure: 101_325,
});

describe("heat loss of a pipe", () => {
	const loss = pipeHeatLoss(lagged(0.03, 0), oilAt(423.15));
	it("passes the same heat through every layer", () => {
		const total =
			loss.insideResistance + loss.wallResistance + loss.insulationResistance + loss.outsideResistance;
		expect(loss.perMetre * total).toBeCloseTo(130, 9);
		expect(loss.coefficientPerMetre * total).toBeCloseTo(1, 12);
		expect(loss.perMetre * loss.outsideResistance).toBeCloseTo(loss.surfaceTemperature - 293.15, 5);
	});
	it("takes the lagging at the mean of its own faces", () => {
		const hotFace = 423.15 - loss.perMetre * (loss.insideResistance + loss.wallResistance);
		const t = (hotFace + loss.surfaceTemperature) / 2 - 273.15;
		const [a, b, c] = insulationMaterial("mineralWool").conductivity;
		const exact = shellResistance(0.022, 0.082, a + b * t + c * t * t);
		expect(Math.abs(loss.insulationResistance / exact - 1)).toBeLessThan(1e-4);
	});
	it("is reached by passes from the air's temperature, fast", () => {
		for (const pipe of [lagged(0.03, 0), lagged(0, 0)]) {
			const exact = pipeHeatLoss(pipe, oilAt(423.15));
			let skin = 293.15;
			for (let i = 0; i < 12; i++) skin = pipeLossPass(pipe, oilAt(423.15), skin).surfaceTemperature;
			expect(Math.abs(skin - exact.surfaceTemperature)).toBeLessThan(1e-3);
			const near = pipeLossPass(pipe, oilAt(423.15), exact.surfaceTemperature + 1);
			expect(Math.abs(near.coefficientPerMetre / exact.coefficientPerMetre - 1)).toBeLessThan(0.01);
			expect(Math.abs(near.surfaceTemperature - exact.surfaceTemperature)).toBeLessThan(1 / 5);
		}
	});
	it("falls with lagging, rises with wind, water and heat", () => {
		const at = (pipe: Pipe, conditions: PipeConditions) => pipeHeatLoss(pipe, conditions).perMetre;
		const base = at(lagged(0.03, 0), oilAt(423.15));
		expect(at(lagged(0.04, 0), oilAt(423.15))).toBeLessThan(base);
		expect(at(lagged(0.03, 0.05), oilAt(423.15))).toBeGreaterThan(base * 1.1);
		expect(at(lagged(0.03, 0), { ...oilAt(423.15), wind: 5 })).toBeGreaterThan(base);
		expect(at(lagged(0.03, 0), oilAt(433.15))).toBeGreaterThan(base);
		expect(at(lagged(0, 0), oilAt(423.15))).toBeGreaterThan(4 * base);
	});
	it("needs no known material on a bare pipe, but does on a lagged one", () => {
		const unknown = (thickness: number): Pipe => {
			const pipe = lagged(thickness, 0);
			return { ...pipe, insulation: { ...pipe.insulation, material: "none" } };
		};
		expect(pipeHeatLoss(unknown(0), oilAt(353)).insulationResistance).toBe(0);
		expect(() => pipeHeatLoss(unknown(0.01), oilAt(353))).toThrow(
			expect.objectContaining({ code: "contradictory" }),
		);
	});
	it("is about halved by a shiny bare skin", () => {
		const pipe = lagged(0, 0);
		const shiny = { ...pipe, insulation: { ...pipe.insulation, surfaceEmittance: 0.05 } };
		const still = { ...oilAt(353.15), wind: 0, insideFilm: 1e6 };
		const ratio = pipeHeatLoss(shiny, still).perMetre / pipeHeatLoss(pipe, still).perMetre;
		expect(ratio).toBeGreaterThan(0.4);
		expect(ratio).toBeLessThan(0.6);
	});
	it("is none at the air's temperature and a gain below it", () => {
		expect(pipeHeatLoss(lagged(0.03, 0), oilAt(293.15)).perMetre).toBe(0);
		expect(pipeHeatLoss(lagged(0.03, 0), oilAt(293.15 + 1e-9)).perMetre).toBeCloseTo(0, 8);
		const cold = pipeHeatLoss(lagged(0.03, 0), oilAt(273.15));
		expect(cold.perMetre).toBeLessThan(0);
		expect(cold.surfaceTemperature).toBeLessThan(293.15);
		expect(cold.surfaceTemperature).toBeGreaterThan(273.15);
	});
	it("is none without any film inside", () => {
		const stopped = pipeHeatLoss(lagged(0.03, 0), { ...oilAt(423.15), insideFilm: 0 });
		expect(stopped.perMetre).toBe(0);
		expect(stopped.surfaceTemperature).toBe(293.15);
	});
	it("refuses NaN", () => {
		expect(() => pipeHeatLoss(lagged(0.03, 0), oilAt(Number.NaN))).toThrow();
	});
});

describe("critical radius", () => {
	it("is where a lagged wire loses most", () => {
		const heat = (radius: number) =>
			1 / (shellResistance(0.002, radius, 0.04) + 1 / (2 * Math.PI * radius * 8));
		const best = criticalRadius(0.04, 8);
		expect(heat(best)).toBeGreaterThan(heat(best * 1.05));
		expect(heat(best)).toBeGreaterThan(heat(best * 0.95));
	});
});

describe("held heat", () => {
	it("is the sum of a metre's mass times heat capacity", () => {
		const held = pipeHeldHeat(lagged(0.03, 0), water, 333.15);
		// 0.3142 L/m of water at 60 °C (983.2 kg/m³, 4185 J/kgK: IAPWS-IF97) and 66.0 mm² of copper
		expect(Math.abs(held.fluid / (3.1416e-4 * 983.2 * 4185) - 1)).toBeLessThan(0.002);
		expect(Math.abs(held.metal / (65.97e-6 * 3.45e6) - 1)).toBeLessThan(0.001);
	});
});
