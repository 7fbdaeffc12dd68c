import type { SparseCoil } from "../../../src/design/coil.ts";
import type { SparseTwoAxisDish } from "../../../src/design/dish.ts";
import type { SparseLoop } from "../../../src/design/loop.ts";
import type { SparsePlant } from "../../../src/design/plant.ts";
import type { SparseCavity } from "../../../src/design/sparse-receiver.ts";
import type { SparseTank } from "../../../src/design/tank.ts";
import { mineralOil } from "../../../src/fluids/mineral-oil.ts";
import { lagging, pipe, site } from "../plant/plants.ts";

const COPPER = { wallConductivity: 380, wallHeatCapacity: 3.45e6 };
const TUBE = { innerDiameter: 0.013, outerDiameter: 0.015 }; // [m]

/** Temperature [K] of one in degrees Celsius. */
export const celsius = (temperature: number) => temperature + 273.15;

export const dish: SparseTwoAxisDish = {
	kind: "twoAxis",
	diameter: 2,
	reflectance: 0.85,
	cleanliness: 0.92,
	blockedFraction: 0.06,
	slopeError: 0.005,
	specularity: 0.003,
	trackingError: 0.005,
	lowestAltitude: 0.09,
};

export const cavity: SparseCavity = {
	kind: "cavity",
	apertureDiameter: "auto",
	absorptance: 0.94,
	emittance: 0.9,
	tube: TUBE,
	insulation: lagging(0.05),
};

export const loop: SparseLoop = {
	fluid: mineralOil(32),
	supply: pipe(4, 0.025),
	return: pipe(4, 0.025),
	fittingsLossFactor: 10,
	fittingsLossCoefficient: 0.3,
	pump: {
		flow: 4 / 60_000,
		electricPower: 30,
		efficiency: 0.3,
		heatToFluid: 0.5,
		maximumPressure: 4e5,
		insulated: true,
		heldHeatCapacity: 1000,
	},
	control: { startDifference: 8, stopDifference: 3, hysteresis: 5 },
};

export const coil: SparseCoil = { ...TUBE, ...COPPER, bottom: 0.05, top: 0.6, doubleWall: false };

export const tank: SparseTank = {
	volume: 0.15,
	wallThickness: 0.002,
	wallConductivity: 15,
	wallHeatCapacity: 4e6,
	insulation: lagging(0.08),
	fittingsFactor: 1.3,
	inletHeight: 0.05,
	outletHeight: 1,
	vented: true,
	surroundings: { kind: "outdoors" },
};

/** Nothing stated of the plant but a dish of two metres and a tank of 150 L. */
export const sparse: SparsePlant = {
	...{ site, dish, receiver: cavity, loop, coil, tank },
	mains: celsius(10),
};
