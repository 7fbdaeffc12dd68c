import { describe, expect, it } from "vitest";
import { designLoop, type SparseLoop } from "../../../src/design/loop.ts";
import { designPlant } from "../../../src/design/plant.ts";
import { designVessel } from "../../../src/design/vessel.ts";
import { type FluidId, fluidById } from "../../../src/fluids/catalogue.ts";
import { loopContent } from "../../../src/plant/content.ts";
import { lagging, pipe, site } from "../plant/plants.ts";
import { celsius, coil, loop, sparse, tank } from "./sparse-plant.ts";

const withFluid = (id: FluidId): SparseLoop => ({ ...loop, fluid: fluidById(id) });

describe("limits of a loop that nobody stated", () => {
	const limitsOf = (elevation: number, id: FluidId, vented = true) => {
		const { highLimit, oilLimit } = designPlant({
			...sparse,
			site: { ...site, elevation },
			loop: withFluid(id),
			tank: { ...tank, vented },
		}).design.loop.control;
		return [highLimit - 273.15, oilLimit - 273.15].map((value) => Math.round(value * 1e6) / 1e6);
	};

	// Boiling points of 99.97, 93.32, 89.97 and 83.25 °C: ISO 2533:1975 and IAPWS R7-97, whole degrees down
	it.each([
		[0, 90, 96],
		[2000, 88, 90],
		[3000, 84, 86],
		[5000, 78, 80],
	])("at %d m keep water from boiling in tank and loop", (elevation, high, oil) => {
		expect(limitsOf(elevation, "water")).toEqual([high, oil]);
		expect(limitsOf(elevation, "propyleneGlycol40")).toEqual([high, oil]);
	});

	it("of oil are 20 K below its 180 °C in bulk, wherever it is", () => {
		expect(limitsOf(0, "mineralOilVg32")).toEqual([90, 160]);
		expect(limitsOf(3000, "mineralOilVg68")).toEqual([84, 160]);
	});

	it("of a closed tank are the open one's at the sea, for it boils far above", () => {
		expect(limitsOf(5000, "mineralOilVg32", false)[0]).toBe(90);
	});
});

it("a bare pump loses three times what a lagged one does", () => {
	const around = { content: 0, tankBoiling: celsius(100), openBoiling: celsius(100) };
	const casing = (insulated: boolean) =>
		designLoop({ ...loop, pump: { ...loop.pump, insulated } }, around).design.pump.casingLossCoefficient;
	expect(casing(false)).toBeCloseTo(3 * casing(true), 12);
});

describe("an expansion vessel", () => {
	it.each(["mineralOilVg32", "vegetableOil", "water"] as const)(
		"has room for %s to swell from 10 °C to its limit, and to spare",
		(id) => {
			const { design } = designPlant({ ...sparse, loop: { ...withFluid(id), supply: pipe(90, 0.025) } });
			const { fluid, control, expansionVolume } = design.loop;
			const content = loopContent(design);
			const swells = content * (fluid.density(celsius(10)) / fluid.density(control.oilLimit - 1) - 1);
			expect(expansionVolume).toBeGreaterThan(1.3 * swells);
			expect(expansionVolume).toBeLessThan(0.0005 + 0.2 * content);
		},
	);

	it("is no smaller than the smallest sold", () => {
		const around = { content: 0, tankBoiling: celsius(100), openBoiling: celsius(100) };
		expect(designLoop({ ...loop, supply: pipe(0.1, 0) }, around).design.expansionVolume).toBe(5e-4);
	});
});

describe("an oil vessel", () => {
	const vessel = {
		fluid: loop.fluid,
		fill: 0.02,
		wallThickness: 0.002,
		wallConductivity: 50,
		wallHeatCapacity: 3.6e6,
		insulation: lagging(0.08),
		fittingsFactor: 1.3,
		coil,
		circulation: 4 / 60_000,
		charge: celsius(150),
	};

	it("is a cylinder of its volume, half as high again as wide", () => {
		const { design, assumed } = designVessel(vessel);
		expect((Math.PI / 4) * design.diameter ** 2 * design.height).toBeCloseTo(0.02, 12);
		expect(design.height / design.diameter).toBeCloseTo(1.5, 12);
		expect(design.coil.coilDiameter).toBeCloseTo(0.7 * design.diameter, 12);
		expect(assumed.map(({ subject }) => subject)).toEqual([
			"vessel.diameter",
			"vessel.limit",
			"vessel.coil.coilDiameter",
			"vessel.coil.length",
		]);
	});

	it("of a stated diameter is as high as its volume asks, and turns away 20 K below its oil's limit", () => {
		const { design } = designVessel({ ...vessel, diameter: 0.2 });
		expect(design.height).toBeCloseTo(0.02 / (Math.PI * 0.01), 12);
		expect(design.limit).toBeCloseTo(celsius(160), 9); // mineral oil lasts at 180 °C in bulk
		expect(designVessel({ ...vessel, limit: celsius(120) }).design.limit).toBe(celsius(120));
	});
});
