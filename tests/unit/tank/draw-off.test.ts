import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { water } from "../../../src/fluids/water.ts";
import { drawOff } from "../../../src/tank/draw-off.ts";
import { layerEnergy, tankModel, tankState } from "../../../src/tank/model.ts";
import type { Tank } from "../../../src/tank/tank.ts";
import { aTank, graded, sum } from "./a-tank.ts";

function tankOf(temperatures: Float64Array, changes: Partial<Tank>) {
	const model = tankModel(aTank({ ...changes, startTemperatures: temperatures }));
	return { model, state: tankState(model, temperatures) };
}

describe("drawOff", () => {
	it("closes its energy to round-off, whatever ports, profile and mass it is given", () => {
		const cases = fc.record({
			temperatures: fc.array(fc.double({ min: 274, max: 372, noNaN: true }), { minLength: 1, maxLength: 20 }),
			inletHeight: fc.double({ min: 0, max: 1, noNaN: true }),
			outletHeight: fc.double({ min: 0, max: 1, noNaN: true }),
			mass: fc.double({ min: 1e-6, max: 400, noNaN: true }),
			mains: fc.double({ min: 274, max: 330, noNaN: true }),
		});
		fc.assert(
			fc.property(cases, ({ temperatures, mass, mains, ...ports }) => {
				const layers = Float64Array.from(temperatures).sort().reverse();
				const { model, state } = tankOf(layers, ports);
				const { state: after, drawn, outletEnthalpy } = drawOff(model, state, mass, mains);
				expect(Math.abs(sum(state.energies) - sum(after.energies) - drawn)).toBeLessThan(
					1e-12 * sum(state.energies) + 1e-9 * Math.abs(drawn),
				);
				expect(mass * (outletEnthalpy - water.enthalpy(mains))).toBeCloseTo(drawn, 3);
				const low = Math.min(mains, ...layers) - 1e-6;
				const high = Math.max(mains, ...layers) + 1e-6;
				for (const t of after.temperatures) expect(t >= low && t <= high).toBe(true);
			}),
		);
	});

	it("gives the same in one go as in a thousand", () => {
		const { model, state } = tankOf(graded(10, 345, 300), { wallThickness: 0 });
		const whole = drawOff(model, state, 90, 288.15);
		let now = state;
		let drawn = 0;
		for (let i = 0; i < 1000; i++) {
			const part = drawOff(model, now, 0.09, 288.15);
			now = part.state;
			drawn += part.drawn;
		}
		expect(drawn / whole.drawn).toBeCloseTo(1, 11);
		now.temperatures.forEach((t, i) => {
			expect(t).toBeCloseTo(whole.state.temperatures[i]!, 8);
		});
	});

	it("does so within 1e-4 with a steel wall to cool as well", () => {
		const { model, state } = tankOf(graded(10, 345, 300), { wallThickness: 0.004 });
		const whole = drawOff(model, state, 90, 288.15);
		let drawn = 0;
		for (let i = 0, now = state; i < 100; i++) {
			const part = drawOff(model, now, 0.9, 288.15);
			now = part.state;
			drawn += part.drawn;
		}
		expect(Math.abs(drawn / whole.drawn - 1)).toBeLessThan(1e-4);
	});

	it("lets the first drop out as hot as the outlet's layer, steel wall or not", () => {
		const { model, state } = tankOf(graded(10, 345, 300), { wallThickness: 0.004 });
		const { outletEnthalpy } = drawOff(model, state, 1e-6, 288.15);
		expect(water.temperatureAtEnthalpy(outletEnthalpy)).toBeCloseTo(345, 4);
	});

	it("changes nothing for no mass, and nothing where inlet and tank are one", () => {
		const { model, state } = tankOf(new Float64Array(6).fill(330), {});
		expect(drawOff(model, state, 0, 280)).toEqual({
			state,
			drawn: 0,
			outletEnthalpy: water.enthalpy(330),
		});
		const same = drawOff(model, state, 50, 330);
		expect(Math.abs(same.drawn)).toBeLessThan(1e-6);
	});

	it("ends at the inlet's temperature after many tanks full", () => {
		const { model, state } = tankOf(new Float64Array(8).fill(340), {});
		const { state: after, drawn } = drawOff(model, state, 50_000, 285);
		for (const t of after.temperatures) expect(t).toBeCloseTo(285, 9);
		expect(drawn / (sum(state.energies) - 8 * layerEnergy(model, 285))).toBeCloseTo(1, 12);
	});

	it("leaves water beyond the ports alone unless the inlet's water sinks into it", () => {
		const { model, state } = tankOf(graded(10, 345, 300), { outletHeight: 0.75 });
		const { temperatures } = drawOff(model, state, 20, 290).state;
		expect(temperatures[0]).toBeCloseTo(345, 9);
		const high = tankOf(graded(10, 345, 300), { inletHeight: 0.45 });
		const sunk = drawOff(high.model, high.state, 60, 280).state.temperatures;
		expect(sunk[9]).toBeLessThan(300);
	});

	it("lets mains that is warmer than the bottom rise and mix, as in many small draws", () => {
		const { model, state } = tankOf(graded(10, 345, 283), {});
		const whole = drawOff(model, state, 60, 305).state.temperatures;
		let now = state;
		for (let i = 0; i < 600; i++) now = drawOff(model, now, 0.1, 305).state;
		now.temperatures.forEach((t, i) => {
			expect(Math.abs(t - whole[i]!)).toBeLessThan(0.3);
		});
	});

	it("costs hot water to let the cold in at the top", () => {
		const layers = graded(10, 345, 300);
		const right = tankOf(layers, {});
		const wrong = tankOf(layers, { inletHeight: 1, outletHeight: 0 });
		const mixed = drawOff(wrong.model, wrong.state, 40, 288.15);
		expect(mixed.drawn).toBeLessThan(drawOff(right.model, right.state, 40, 288.15).drawn);
		expect(mixed.state.temperatures[0]).toBeLessThan(340);
	});

	it("refuses a mass that is not a number, or below zero", () => {
		const { model, state } = tankOf(graded(3, 330, 300), {});
		expect(() => drawOff(model, state, Number.NaN, 288)).toThrow("mass drawn");
		expect(() => drawOff(model, state, -1, 288)).toThrow("mass drawn");
	});
});
