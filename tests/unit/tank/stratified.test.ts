import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { layerEnergy, tankModel, tankState } from "../../../src/tank/model.ts";
import { type TankInputs, tankStep } from "../../../src/tank/stratified.ts";
import { aTank, graded, sum } from "./a-tank.ts";

const still = (layers: number): TankInputs => ({
	coilHeat: new Float64Array(layers),
	lossCoefficient: 0,
	surroundings: 293.15,
	boilingPoint: 373.15,
});

function tankOf(temperatures: Float64Array) {
	const model = tankModel(aTank({ startTemperatures: temperatures }));
	return { model, state: tankState(model, temperatures) };
}

describe("tankStep", () => {
	it("closes its energy to round-off, whatever heat, loss and step it is given", () => {
		const inputs = fc.record({
			temperatures: fc.array(fc.double({ min: 274, max: 372, noNaN: true }), { minLength: 1, maxLength: 20 }),
			heat: fc.double({ min: -500, max: 5000, noNaN: true }),
			loss: fc.double({ min: 0, max: 50, noNaN: true }),
			dt: fc.double({ min: 1, max: 3600, noNaN: true }),
		});
		fc.assert(
			fc.property(inputs, ({ temperatures, heat, loss, dt }) => {
				const { model, state } = tankOf(Float64Array.from(temperatures));
				const coilHeat = Float64Array.from(temperatures, (_, i) => heat / (1 + i));
				const step = tankStep(model, state, { ...still(0), coilHeat, lossCoefficient: loss }, dt);
				const before = sum(state.energies) + sum(coilHeat) * dt;
				const after = sum(step.state.energies) + step.loss + step.vented;
				expect(Math.abs(after - before)).toBeLessThan(1e-12 * (Math.abs(before) + 1e6));
				step.state.temperatures.forEach((t, i) => {
					expect(Math.abs(layerEnergy(model, t) - step.state.energies[i]!)).toBeLessThan(1e-3);
					expect(t).toBeLessThanOrEqual(373.15);
				});
			}),
		);
	});

	it("leaves the state it is given alone", () => {
		const { model, state } = tankOf(graded(5, 340, 300));
		const copy = Array.from(state.energies);
		tankStep(model, state, { ...still(5), lossCoefficient: 3 }, 600);
		expect(Array.from(state.energies)).toEqual(copy);
	});

	it("does nothing to an even tank left alone, and only evens out a graded one", () => {
		const even = tankOf(new Float64Array(6).fill(320));
		for (const t of tankStep(even.model, even.state, still(6), 3600).state.temperatures)
			expect(t).toBeCloseTo(320, 8);
		const { model, state } = tankOf(graded(6, 340, 300));
		const after = tankStep(model, state, still(6), 3600).state.temperatures;
		expect(after[0]).toBeLessThan(340);
		expect(after[5]).toBeGreaterThan(300);
	});

	it("conducts across a step between two layers as their exponential says", () => {
		const { model, state } = tankOf(new Float64Array([330, 310]));
		let now = state;
		for (let i = 0; i < 240; i++) now = tankStep(model, now, still(2), 900).state;
		const capacity = layerEnergy(model, 320.5) - layerEnergy(model, 319.5);
		const decay = Math.exp((-2 * model.exchange * 240 * 900) / capacity);
		expect((now.temperatures[0]! - now.temperatures[1]!) / 20).toBeCloseTo(decay, 2);
	});

	it("ends at the surroundings, never beyond, even in steps far longer than its time constant", () => {
		const { model, state } = tankOf(graded(10, 360, 300));
		const step = tankStep(model, state, { ...still(10), lossCoefficient: 5000 }, 3600);
		for (const t of step.state.temperatures) {
			expect(t).toBeGreaterThanOrEqual(293.15);
			expect(t).toBeLessThan(310);
		}
		let now = state;
		for (let i = 0; i < 50; i++)
			now = tankStep(model, now, { ...still(10), lossCoefficient: 5000 }, 3600).state;
		expect(now.temperatures[0]).toBeCloseTo(293.15, 6);
	});

	it("warms evenly above heat that is put in at the bottom", () => {
		const { model, state } = tankOf(new Float64Array(5).fill(300));
		const coilHeat = new Float64Array([0, 0, 0, 0, 2000]);
		const { temperatures } = tankStep(model, state, { ...still(5), coilHeat }, 600).state;
		expect(temperatures[0]).toBeCloseTo(temperatures[4]!, 9);
		expect(temperatures[0]).toBeGreaterThan(300);
	});

	it("does not warm the bottom with heat that is put in at the top", () => {
		const { model, state } = tankOf(new Float64Array(5).fill(300));
		const coilHeat = new Float64Array([2000, 0, 0, 0, 0]);
		const { temperatures } = tankStep(model, state, { ...still(5), coilHeat }, 600).state;
		expect(temperatures[4]).toBeLessThan(300.01);
	});

	it("vents what would heat it over the boil, and counts it", () => {
		const { model, state } = tankOf(new Float64Array(3).fill(360));
		const coilHeat = new Float64Array([0, 0, 50_000]);
		const step = tankStep(model, state, { ...still(3), coilHeat, boilingPoint: 363.12 }, 3600);
		for (const t of step.state.temperatures) expect(t).toBeCloseTo(363.12, 9);
		const toBoil = 3 * (layerEnergy(model, 363.12) - layerEnergy(model, 360));
		expect(step.vented).toBeCloseTo(50_000 * 3600 - toBoil, 2);
	});

	it("halves its error with its step", () => {
		const run = (steps: number) => {
			const { model, state } = tankOf(new Float64Array(1).fill(333.15));
			let now = state;
			for (let i = 0; i < steps; i++)
				now = tankStep(model, now, { ...still(1), lossCoefficient: 5 }, 86400 / steps).state;
			return now.temperatures[0]!;
		};
		const exact = run(20_000);
		expect((run(24) - exact) / (run(48) - exact)).toBeCloseTo(2, 1);
	});
});
