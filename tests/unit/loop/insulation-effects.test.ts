import { describe, expect, it } from "vitest";
import type { Insulation } from "../../../src/heat/insulation.ts";
import { rainHeatLoss } from "../../../src/loop/insulation-effects.ts";
import { loopLosses } from "../../../src/loop/losses.ts";
import { criticalRadius, pipeHeatLoss } from "../../../src/loop/pipe.ts";
import { aLoop, aPipe, celsius } from "./a-loop.ts";

const conditions = {
	supplyTemperature: celsius(130),
	returnTemperature: celsius(110),
	ambient: celsius(10),
	wind: 2,
	pressure: 101_325,
	others: [],
};
const asked = { addedThicknesses: [0.01, 0.02, 0.03, 0.04], moisture: 0.05, coverEmittance: 0.1 };
const wool = aPipe({}).insulation;
const supplyWith = (insulation: Partial<Insulation>) =>
	loopLosses(aLoop({ supply: aPipe({ insulation: { ...wool, ...insulation } }) }), conditions, asked).supply;

describe("thicker lagging", () => {
	it("is the pipe laid so from the start", () => {
		const { thicker } = supplyWith({});
		for (const { addedThickness, heatLoss } of thicker)
			expect(heatLoss).toBe(supplyWith({ thickness: 0.03 + addedThickness }).heatLoss);
	});
	it("brings less with each step, and its steps add up", () => {
		const { thicker, heatLoss } = supplyWith({});
		let saved = 0;
		thicker.forEach((step, i) => {
			saved += step.further;
			expect(step.saved).toBeCloseTo(saved, 9);
			expect(step.heatLoss + step.saved).toBeCloseTo(heatLoss, 9);
			expect(step.further).toBeGreaterThan(0);
			if (i > 0) expect(step.further).toBeLessThan(thicker[i - 1]!.further);
		});
	});
});

describe("rain and cover", () => {
	it("rank as they must: a bright cover, dry, wet, and wet in rain", () => {
		for (const wind of [0, 5]) {
			const { supply } = loopLosses(aLoop({}), { ...conditions, wind }, asked);
			expect(supply.covered).toBeLessThan(supply.dry);
			expect(supply.dry).toBeLessThan(supply.wet);
			expect(supply.wet).toBeLessThan(supply.uncovered);
		}
	});
	it("are what a gale comes to", () => {
		const pipe = aPipe({});
		const at = { fluidTemperature: celsius(130), insideFilm: 80, ambient: celsius(10), pressure: 101_325 };
		const washed = rainHeatLoss(pipe, 80, at.fluidTemperature, at.ambient);
		const gale = pipeHeatLoss(pipe, { ...at, wind: 1e4 }).perMetre;
		expect(gale).toBeLessThan(washed);
		expect(gale / washed).toBeGreaterThan(0.999);
	});
	it("answer for the layer as it is, where it is wet already", () => {
		const wet = supplyWith({ moisture: 0.05 });
		expect(wet.wet).toBe(wet.heatLoss);
		expect(wet.dry).toBe(supplyWith({}).heatLoss);
	});
});

describe("critical radius", () => {
	const still = { ...conditions, wind: 0 };
	const wire = (outerDiameter: number, thickness: number) =>
		aPipe({
			innerDiameter: outerDiameter / 2,
			outerDiameter,
			insulation: { material: "calciumSilicate", thickness, moisture: 0.15, surfaceEmittance: 0.9 },
		});
	const runOf = (outerDiameter: number, thickness: number) =>
		loopLosses(aLoop({ supply: wire(outerDiameter, thickness), pump: { flow: 1e-6 } }), still, asked).supply;
	it("is where the loss of a thin pipe peaks, but for the film that thins as the radius grows", () => {
		const at = {
			fluidTemperature: celsius(80),
			insideFilm: 1e5,
			ambient: celsius(20),
			wind: 0,
			pressure: 101_325,
		};
		const loss = (radius: number) => pipeHeatLoss(wire(0.002, radius - 0.001), at);
		const radii = Array.from({ length: 400 }, (_, i) => 0.0011 + i * 5e-5);
		const peak = radii.reduce((best, r) => (loss(r).perMetre > loss(best).perMetre ? r : best));
		expect(peak).toBeGreaterThan(radii[3]!);
		expect(peak).toBeLessThan(radii.at(-3)!);
		const { outsideResistance, insulationResistance } = loss(peak);
		const film = 1 / (2 * Math.PI * peak * outsideResistance);
		const conductivity = Math.log(peak / 0.001) / (2 * Math.PI * insulationResistance);
		// dR/dr = 0 with h ∝ r^−m gives r = (1 − m) k/h; m is at most ½ on thin cylinders in still air
		expect(peak / criticalRadius(conductivity, film)).toBeLessThan(1);
		expect(peak / criticalRadius(conductivity, film)).toBeGreaterThan(0.5);
	});
	it("tells whether the first millimetre costs or saves", () => {
		expect(runOf(0.002, 0).firstMillimetre).toBeLessThan(0);
		expect(runOf(0.002, 0).criticalRadius).toBeGreaterThan(0.001);
		expect(runOf(0.03, 0).firstMillimetre).toBeGreaterThan(0);
		expect(runOf(0.03, 0).criticalRadius).toBeLessThan(0.015);
	});
	it("takes conductivity and film from the layers as laid", () => {
		const run = runOf(0.015, 0.03);
		const { insulationResistance, outsideResistance } = run.loss;
		const conductivity = Math.log(0.0375 / 0.0075) / (2 * Math.PI * insulationResistance);
		const film = 1 / (2 * Math.PI * 0.0375 * outsideResistance);
		expect(run.criticalRadius).toBeCloseTo(conductivity / film, 9);
	});
});
