import { mineralOil } from "../../../src/fluids/mineral-oil.ts";
import type { Insulation } from "../../../src/heat/insulation.ts";
import type { Pipe } from "../../../src/loop/loop.ts";
import type { Plant, Task } from "../../../src/plant/plant.ts";
import { stepTimes } from "../../../src/plant/times.ts";
import type { CavityReceiver, Receiver } from "../../../src/receiver/receiver.ts";
import { clearWeather } from "../../../src/sky/clear-weather.ts";
import type { Site } from "../../../src/sky/site.ts";
import type { Weather } from "../../../src/sky/weather.ts";

const DEGREE = Math.PI / 180;
const COPPER = 3.45e6; // [J/m³K]

export const site: Site = { latitude: 31.2 * DEGREE, longitude: -7.9 * DEGREE, elevation: 2350, albedo: 0.2 };

export const lagging = (thickness: number): Insulation => ({
	material: "mineralWool",
	thickness,
	moisture: 0,
	surfaceEmittance: 0.9,
});

export const pipe = (length: number, thickness: number): Pipe => ({
	length,
	innerDiameter: 0.01,
	outerDiameter: 0.012,
	wallConductivity: 380,
	wallHeatCapacity: COPPER,
	roughness: 1.5e-6,
	insulation: lagging(thickness),
});

export const cavity: CavityReceiver = {
	kind: "cavity",
	apertureDiameter: 0.12,
	innerDiameter: 0.16,
	depth: 0.16,
	absorptance: 0.94,
	emittance: 0.9,
	tube: { innerDiameter: 0.01, outerDiameter: 0.012, length: 7 },
	insulation: lagging(0.05),
};

export const openCoil: Receiver = {
	kind: "openCoil",
	apertureDiameter: 0.16,
	absorptance: 0.94,
	emittance: 0.9,
	tube: { innerDiameter: 0.01, outerDiameter: 0.012, length: 1.6 },
	insulation: lagging(0.05),
};

export const glazedCoil: Receiver = {
	...openCoil,
	kind: "glazedCoil",
	coverTransmittance: 0.9,
	coverGap: 0.02,
};

export const measuredDish: Receiver = {
	kind: "efficiencyLine",
	opticalEfficiency: 0.7,
	lossCoefficient: 5,
	heldHeatCapacity: 2000,
};

export const plant: Plant = {
	site,
	dish: {
		kind: "twoAxis",
		diameter: 2,
		focalLength: 0.9,
		reflectance: 0.9,
		cleanliness: 0.95,
		blockedFraction: 0.03,
		slopeError: 0.004,
		specularity: 0.002,
		trackingError: 0.004,
		lowestAltitude: 5 * DEGREE,
	},
	receiver: cavity,
	loop: {
		fluid: mineralOil(32),
		supply: pipe(4, 0.025),
		return: pipe(4, 0.025),
		fittingsLossFactor: 8,
		fittingsLossCoefficient: 0.2,
		pump: {
			flow: 4 / 60_000,
			electricPower: 40,
			efficiency: 0.3,
			heatToFluid: 0.5,
			maximumPressure: 4e5,
			casingLossCoefficient: 0.3,
			heldHeatCapacity: 800,
		},
		control: {
			startDifference: 6,
			stopDifference: 2,
			highLimit: 368.15,
			oilLimit: 493.15,
			hysteresis: 5,
		},
		expansionVolume: 0.001,
	},
	coil: {
		innerDiameter: 0.01,
		outerDiameter: 0.012,
		length: 12,
		coilDiameter: 0.35,
		wallConductivity: 380,
		wallHeatCapacity: COPPER,
		bottom: 0.05,
		top: 0.6,
		gapResistance: 0,
	},
	tank: {
		fill: 0.15,
		height: 1.1,
		diameter: 0.42,
		wallThickness: 0.002,
		wallConductivity: 50,
		wallHeatCapacity: 3.7e6,
		insulation: { material: "polyurethane", thickness: 0.08, moisture: 0, surfaceEmittance: 0.9 },
		fittingsFactor: 1.2,
		inletHeight: 0,
		outletHeight: 1,
		startTemperatures: new Float64Array(10).fill(283.15),
		reliefPressure: 0,
		surroundings: { kind: "outdoors" },
	},
};

const MORNING = Date.UTC(2026, 0, 15, 7, 45) / 1000;
const EVENING = Date.UTC(2026, 0, 15, 18, 0) / 1000;

export const task: Task = {
	start: MORNING,
	end: EVENING,
	step: 60,
	seriesStep: 900,
	target: { temperature: 333.15, at: "mean" },
	draws: [],
	mains: 283.15,
};

export function clearDay(at: Site, day: Task, wind: number): Weather {
	return clearWeather(
		at,
		{ turbidity: 3, ambientMinimum: 273.15, ambientMaximum: 288.15, wind },
		stepTimes(day),
	);
}
