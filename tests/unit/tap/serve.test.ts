import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { water } from "../../../src/fluids/water.ts";
import { layerEnergy, tankModel, tankState } from "../../../src/tank/model.ts";
import { serveTap } from "../../../src/tap/serve.ts";
import { usableVolume } from "../../../src/tap/usable.ts";
import { aTank, graded, sum } from "../tank/a-tank.ts";

const MAINS = 288.15;
const WANTED = 313.15;
const RISE = water.enthalpy(WANTED) - water.enthalpy(MAINS);

function tankOf(temperatures: Float64Array, outletHeight: number) {
	const model = tankModel(aTank({ startTemperatures: temperatures, outletHeight, wallThickness: 0 }));
	return { model, state: tankState(model, temperatures) };
}

describe("serveTap", () => {
	it("meets a demand that the tank has the heat for, with less hot water than is asked at the tap", () => {
		const { model, state } = tankOf(graded(10, 340, 320), 1);
		const served = serveTap(model, state, { mass: 50, temperature: WANTED }, MAINS);
		expect(served.unmet).toBe(0);
		expect(served.delivered / (50 * RISE)).toBeCloseTo(1, 8);
		expect(sum(state.energies) - sum(served.state.energies)).toBeCloseTo(served.drawnAboveMains, 1);
	});

	it("leaves nothing unmet, to the last digit, while the tank is hotter than wanted", () => {
		const temperatures = [351.3, 339.7, 348.15, 333.33, 341.9];
		const unmet = temperatures.flatMap((top) =>
			[7, 31, 60, 90].map((mass) => {
				const { model, state } = tankOf(graded(10, top, top - 7), 1);
				return serveTap(model, state, { mass, temperature: 315.15 }, 281.15).unmet;
			}),
		);
		expect(unmet).toEqual(unmet.map(() => 0));
	});

	it("delivers and misses together what was asked, whatever the tank", () => {
		const cases = fc.record({
			top: fc.double({ min: 289, max: 370, noNaN: true }),
			spread: fc.double({ min: 0, max: 60, noNaN: true }),
			mass: fc.double({ min: 0.01, max: 300, noNaN: true }),
			outlet: fc.constantFrom(1, 0.7, 0.2),
		});
		fc.assert(
			fc.property(cases, ({ top, spread, mass, outlet }) => {
				const { model, state } = tankOf(graded(8, top, Math.max(275, top - spread)), outlet);
				const served = serveTap(model, state, { mass, temperature: WANTED }, MAINS);
				const asked = mass * RISE;
				expect(Math.abs(served.delivered + served.unmet - asked) / asked).toBeLessThan(2e-9);
				const gone = sum(state.energies) - sum(served.state.energies);
				expect(Math.abs(gone - served.drawnAboveMains)).toBeLessThan(1e-10 * sum(state.energies));
			}),
			{ numRuns: 60 },
		);
	});

	it("takes the whole flow from a lukewarm tank and says what is missing", () => {
		const { model, state } = tankOf(new Float64Array(10).fill(303.15), 1);
		const served = serveTap(model, state, { mass: 10, temperature: WANTED }, MAINS);
		const given = water.enthalpy(303.15) - water.enthalpy(MAINS);
		expect(served.delivered / (10 * given)).toBeCloseTo(1, 3);
		expect(served.unmet / (10 * (RISE - given))).toBeCloseTo(1, 3);
	});

	it("serves the usable volume of a tank with a sharp thermocline, and not much more", () => {
		const layers = new Float64Array(200).fill(MAINS).fill(333.15, 0, 120);
		const { model, state } = tankOf(layers, 1);
		const mass = usableVolume(model, layers, WANTED, MAINS) * water.density(WANTED);
		const served = serveTap(model, state, { mass, temperature: WANTED }, MAINS);
		expect(served.delivered / (mass * RISE)).toBeGreaterThan(0.97);
		expect(served.delivered / (mass * RISE)).toBeLessThanOrEqual(1);
	});

	it("draws nothing for water as cold as the mains, or for none", () => {
		const { model, state } = tankOf(graded(10, 340, 320), 1);
		for (const demand of [
			{ mass: 50, temperature: MAINS },
			{ mass: 0, temperature: WANTED },
		])
			expect(serveTap(model, state, demand, MAINS)).toEqual({
				state,
				drawnAboveMains: 0,
				delivered: 0,
				unmet: 0,
			});
	});

	it("gives all that a tank holds to a tap that asks a thousand tanks more, wherever the cold comes in", () => {
		for (const inletHeight of [0, 0.5]) {
			const temperatures = graded(50, 340, 320);
			const model = tankModel(aTank({ startTemperatures: temperatures, inletHeight, wallThickness: 0 }));
			const state = tankState(model, temperatures);
			const mass = 1000 * 50 * model.layerMass; // half a million substeps, were none left out
			const served = serveTap(model, state, { mass, temperature: WANTED }, MAINS);
			const held = sum(state.energies) - 50 * layerEnergy(model, MAINS);
			expect(served.delivered / held).toBeCloseTo(1, 9);
			expect((served.delivered + served.unmet) / (mass * RISE)).toBeCloseTo(1, 9);
			for (const t of served.state.temperatures) expect(t).toBeCloseTo(MAINS, 7);
		}
	});

	it("refuses a mass that is not a number", () => {
		const { model, state } = tankOf(graded(10, 340, 320), 1);
		expect(() => serveTap(model, state, { mass: Number.NaN, temperature: WANTED }, MAINS)).toThrow("mass");
	});
});
