import type { Fluid } from "../../../src/fluids/fluid.ts";
import { water } from "../../../src/fluids/water.ts";
import type { Steps } from "../../../src/improvements/steps.ts";
import { AS_CORRELATED } from "../../../src/plant/factors.ts";
import type { Receiver } from "../../../src/receiver/receiver.ts";
import type { DayCase } from "../../../src/uncertainty/day-case.ts";
import type { DaySpreads } from "../../../src/uncertainty/day-spreads.ts";
import { plant, task } from "../plant/plants.ts";

export const spreads: DaySpreads = {
	turbidity: 0.7,
	measuredBeam: 0.03,
	reflectance: 0.02,
	cleanliness: 0.03,
	slopeError: 0.25,
	absorptance: 0.02,
	opticalEfficiency: 0.03,
	lossCoefficient: 0.1,
	receiverConvection: 0.25,
	coilFilm: 0.32,
	laggingLoss: 0.15,
	tankLoss: 0.15,
	pumpFlow: 0.1,
	ambient: 2,
	wind: 0.4,
	coldWater: 1.5,
};

export const steps: Steps = {
	aperture: 0.1,
	reflectance: 0.94,
	cleaning: 0.98,
	slopeError: 0.25,
	receiverAperture: 0.1,
	selectiveCoating: 0.15,
	glazing: { transmittance: 0.9, gap: 0.025 },
	supplyLagging: 0.02,
	returnLagging: 0.02,
	pumpLagging: 0.6,
	tankLagging: 0.05,
	dryLagging: 0.05,
	flow: 0.25,
	coilLength: 0.25,
	shorterPipes: 0.25,
};

/** The first hours of a reduced day, where it is only held against other draws of itself: half the cost again. */
export function hoursOf(stated: DayCase, hours: number): DayCase {
	const { task, ...rest } = reduced(stated);
	return { ...rest, task: { ...task, end: task.start + hours * 3600 } };
}

/** The same day with a tank of four layers and a step of a quarter of an hour, which an oil limit out of reach leaves whole:
 *  a sixth of the cost. */
export function reduced(stated: DayCase): DayCase {
	const { tank, loop } = stated.plant;
	const control = { ...loop.control, oilLimit: 2000 };
	const startTemperatures = new Float64Array(4).fill(283.15);
	const plant = { ...stated.plant, tank: { ...tank, startTemperatures }, loop: { ...loop, control } };
	return { ...stated, plant, task: { ...stated.task, step: 900 } };
}

/** A clear winter day at a coarse step.
 *  @param fill    of the tank [m³], as wide as in the plants of the plant's tests and as tall as that takes
 *  @param target  [K] */
export function dayCase(receiver: Receiver, fill: number, target: number): DayCase {
	return {
		plant: { ...plant, receiver, tank: { ...plant.tank, fill, height: (fill / 0.15) * plant.tank.height } },
		factors: AS_CORRELATED,
		sky: { kind: "clear", sky: { turbidity: 3, ambientMinimum: 273.15, ambientMaximum: 288.15, wind: 2 } },
		task: { ...task, step: 240, target: { temperature: target, at: "mean" } },
	};
}

/** A fluid that stands for a fault in the code: it throws what no model does. */
export const FAULTY: Fluid = {
	...water,
	density: () => {
		throw new TypeError("a fault");
	},
};
