import { expect, it } from "vitest";
import { FLUID_IDS, fluidById } from "../../../src/fluids/catalogue.ts";
import { type NodeModel, nodeCapacity, nodeEnergy, nodeTemperature } from "../../../src/plant/nodes.ts";

const made = (fluid: NodeModel["fluid"], mass: number, metal: number): NodeModel => ({
	fluid,
	fluidMass: new Float64Array(4).fill(mass),
	metal: new Float64Array(4).fill(metal),
});

it.each(FLUID_IDS)("finds the temperature of a lump of %s from its heat", (id) => {
	const model = made(fluidById(id), 1.5, 900);
	for (const celsius of [-15, 5, 60, 95, 140, 300]) {
		const t = celsius + 273.15;
		expect(nodeTemperature(model, 0, nodeEnergy(model, 0, t), t + 20)).toBeCloseTo(t, 7);
	}
});

it("has the slope of its heat for a capacity", () => {
	const model = made(fluidById("mineralOilVg32"), 2, 500);
	const slope = (nodeEnergy(model, 0, 340.05) - nodeEnergy(model, 0, 339.95)) / 0.1;
	expect(nodeCapacity(model, 0, 340)).toBeCloseTo(slope, 4);
});

it("keeps the guess for a lump of nothing", () => {
	expect(nodeTemperature(made(fluidById("water"), 0, 0), 0, 0, 321)).toBe(321);
});
