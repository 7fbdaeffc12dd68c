import { describe, expect, it } from "vitest";
import { water } from "../../../src/fluids/water.ts";
import { layerAtHeight, shellGeometry } from "../../../src/tank/geometry.ts";
import {
	layerEnergy,
	layerHeatCapacity,
	layerTemperature,
	tankModel,
	tankState,
} from "../../../src/tank/model.ts";
import { aTank, graded, sum } from "./a-tank.ts";

describe("tankModel", () => {
	it("shares the water, the wall and the loss out in full", () => {
		const tank = aTank({ startTemperatures: graded(7, 340, 290) });
		const model = tankModel(tank);
		expect(model.layerMass * 7).toBeCloseTo(0.15 * water.density(315), 9);
		expect(sum(model.lossShares)).toBeCloseTo(1, 12);
		const steel = 0.002 * (Math.PI * 0.4 * 1.2 + (2 * Math.PI * 0.16) / 4);
		expect(model.layerWallCapacity * 7).toBeCloseTo(steel * 3.9e6, 6);
	});

	it("gives the ends to the first and the last layer", () => {
		const { lossShares } = tankModel(aTank({}));
		expect(lossShares[0]).toBeGreaterThan(lossShares[4]!);
		expect(lossShares[9]).toBeGreaterThan(lossShares[4]!);
	});

	it("gives the dry wall of a part-filled vessel to the top layer", () => {
		const half = tankModel(aTank({ fill: 0.075 })).lossShares;
		expect(half[0]).toBeGreaterThan(tankModel(aTank({})).lossShares[0]!);
		expect(sum(half)).toBeCloseTo(1, 12);
	});

	it("conducts between two layers as water and wall over their distance", () => {
		const bare = tankModel(aTank({ wallThickness: 0 }));
		const spacing = 0.15 / (Math.PI * 0.04) / 10;
		expect(bare.exchange).toBeCloseTo((water.conductivity(333.15) * Math.PI * 0.04) / spacing, 9);
		expect(tankModel(aTank({})).exchange).toBeGreaterThan(bare.exchange);
	});

	it("puts ports into the layer of their height", () => {
		expect([1, 0.95, 0.9, 0.5, 0.05, 0].map((h) => layerAtHeight(h, 10))).toEqual([0, 0, 1, 5, 9, 9]);
	});

	it("refuses a fill that the vessel cannot hold, and temperatures that are no water's", () => {
		expect(() => tankModel(aTank({ fill: 0.16 }))).toThrow("does not fit");
		expect(() => tankModel(aTank({ startTemperatures: new Float64Array([Number.NaN]) }))).toThrow(
			"start temperature",
		);
		expect(() => tankModel(aTank({ startTemperatures: new Float64Array(0) }))).toThrow("number of layers");
		expect(() => shellGeometry(aTank({ diameter: Number.NaN }))).toThrow("tank diameter");
		expect(() => layerAtHeight(1.01, 5)).toThrow("height in the tank");
	});
});

describe("layerTemperature", () => {
	const model = tankModel(aTank({}));
	it.each([274, 300, 333.3, 372, 440])("undoes layerEnergy at %d K from a far guess", (temperature) => {
		const energy = layerEnergy(model, temperature);
		expect(Math.abs(layerTemperature(model, energy, 290) - temperature)).toBeLessThan(1e-9);
	});

	it("has the heat capacity as the slope of the energy", () => {
		const slope = (layerEnergy(model, 320.01) - layerEnergy(model, 319.99)) / 0.02;
		expect(layerHeatCapacity(model, 320) / slope).toBeCloseTo(1, 6);
	});

	it("refuses an energy that is not a number", () => {
		expect(() => layerTemperature(model, Number.NaN, 300)).toThrow("no temperature found");
	});
});

describe("tankState", () => {
	it("wants one temperature for each layer", () => {
		expect(() => tankState(tankModel(aTank({})), new Float64Array(9))).toThrow("one temperature");
	});
});
