import { describe, expect, it } from "vitest";
import { circulatingStep } from "../../../src/plant/circulating-loop.ts";
import type { LinearisedLoss, LoopCoefficients, LoopFluxes } from "../../../src/plant/coefficients.ts";
import { restingStep } from "../../../src/plant/resting-loop.ts";

const coefficients: LoopCoefficients = {
	capacityRate: 120,
	ambient: 283,
	absorbed: 1800,
	film: 80,
	supplyPipe: 1.2,
	returnPipe: 1.1,
	fittings: 0.3,
	casing: 0.4,
	pumpHeat: 20,
	coil: Float64Array.of(0, 30, 40),
	layerTemperatures: Float64Array.of(320, 310, 300),
	layerCapacities: Float64Array.of(2e5, 2e5, 2e5),
};
const loss: LinearisedLoss = {
	refersTo: "wall",
	at: 350,
	radiated: 40,
	convected: 60,
	conducted: 20,
	unresolved: 0,
	radiatedSlope: 0.8,
	convectedSlope: 1,
	conductedSlope: 0.3,
	unresolvedSlope: 0,
};
const held = Float64Array.of(2500, 3000, 3500, 3800);
const before = Float64Array.of(340, 338, 325, 322);

const lost = (f: LoopFluxes) => f.supplyPipe + f.returnPipe + f.fittings + f.casing;
const atReceiver = (f: LoopFluxes) => f.useful + f.radiated + f.convected + f.conducted + f.unresolved;
const sum = (values: Float64Array) => values.reduce((total, value) => total + value, 0);

describe.each([
	["circulating", circulatingStep, coefficients],
	["resting", restingStep, { ...coefficients, capacityRate: 0, pumpHeat: 0 }],
] as const)("a %s step", (_name, step, c) => {
	it.each([1, 60, 3600])("accounts for every watt at a step of %i s", (dt) => {
		const f = step(held, before, c, loss, dt);
		expect(atReceiver(f)).toBeCloseTo(c.absorbed, 8);
		expect(sum(f.net)).toBeCloseTo(f.useful + c.pumpHeat - lost(f) - f.toWater, 8);
		expect(sum(f.toLayers)).toBeCloseTo(f.toWater, 8);
	});

	it("applies fluxes that lead to the temperatures it solved for", () => {
		const dt = 30;
		const f = step(held, before, c, loss, dt);
		f.temperatures.forEach((t, node) => {
			expect(before[node]! + (f.net[node]! * dt) / held[node]!).toBeCloseTo(t, 8);
		});
	});
});

describe("a circulating step", () => {
	it("settles, over a very long step, where fluid in and out carry what the receiver gives", () => {
		const f = circulatingStep(held, before, coefficients, loss, 1e9);
		const [receiver, , , back] = f.temperatures;
		expect(120 * (receiver! - back!)).toBeCloseTo(f.useful, 2);
	});

	it("heats no layer past the oil that enters the coil, even a tiny layer over a long step", () => {
		const tiny = { ...coefficients, layerCapacities: Float64Array.of(50, 50, 50) };
		const f = circulatingStep(held, before, tiny, loss, 600);
		tiny.layerTemperatures.forEach((t, layer) => {
			const after = t + (f.toLayers[layer]! * 600) / 50;
			expect(after).toBeLessThanOrEqual(f.temperatures[1]! + 1e-9);
		});
	});

	it("brings the fluid to a long coil's layer temperature, and gives nothing through no coil", () => {
		const endless = {
			...coefficients,
			coil: Float64Array.of(0, 0, 1e6),
			layerCapacities: new Float64Array(3).fill(1e12),
		};
		const f = circulatingStep(new Float64Array(4), before, endless, loss, 60);
		expect(f.temperatures[2]!).toBeCloseTo(300, 6);
		const none = circulatingStep(held, before, { ...coefficients, coil: new Float64Array(3) }, loss, 60);
		expect(none.toWater).toBe(0);
	});

	it("cools a pipe's fluid to the air and no further, however slow the flow", () => {
		const slow = { ...coefficients, capacityRate: 0.01, supplyPipe: 500 };
		const f = circulatingStep(new Float64Array(4), before, slow, loss, 60);
		expect(f.temperatures[1]!).toBeGreaterThanOrEqual(slow.ambient - 1e-9);
		expect(f.temperatures[1]!).toBeLessThan(slow.ambient + 1);
	});
});

describe("a resting step", () => {
	it("leaves a loop that holds nothing and loses nothing as it was", () => {
		const still = { ...coefficients, capacityRate: 0, supplyPipe: 0, fittings: 0, returnPipe: 0, casing: 0 };
		const f = restingStep(Float64Array.of(2500, 0, 0, 0), before, still, loss, 60);
		expect(f.temperatures[1]).toBe(338);
		expect(f.temperatures[3]).toBe(322);
		expect(f.toWater).toBe(0);
	});

	it("carries an unlit receiver to the air's temperature in the end", () => {
		const dark = { ...coefficients, capacityRate: 0, absorbed: 0 };
		const cooling: LinearisedLoss = { ...loss, at: 283, radiated: 0, convected: 0, conducted: 0 };
		expect(restingStep(held, before, dark, cooling, 1e9).temperatures[0]!).toBeCloseTo(283, 3);
	});
});
