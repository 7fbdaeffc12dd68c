import { mineralOil } from "../../../src/fluids/mineral-oil.ts";
import type { Conditions } from "../../../src/instant/conditions.ts";
import type { Duty } from "../../../src/instant/duty.ts";
import { type Heater, heaterOf } from "../../../src/instant/heater.ts";
import type { OilVessel } from "../../../src/instant/oil-vessel.ts";
import type { Arrangement, InstantTask } from "../../../src/instant/task.ts";
import type { Pipe } from "../../../src/loop/loop.ts";
import type { Receiver } from "../../../src/receiver/receiver.ts";
import { boilingPoint, standardPressure } from "../../../src/sky/atmosphere.ts";
import { cavity, glazedCoil, lagging, measuredDish, openCoil, plant } from "../plant/plants.ts";

/** A dish of two metres with each kind of receiver. */
export const receivers: readonly Receiver[] = [cavity, openCoil, glazedCoil, measuredDish];
export const heaterWith = (receiver: Receiver): Heater => heaterOf(plant.dish, receiver, 0.5, 0);
export const heater = heaterWith(cavity);

/** All the light, none lost. */
export const ideal: Heater = {
	receiver: { kind: "efficiencyLine", opticalEfficiency: 1, lossCoefficient: 0, heldHeatCapacity: 1000 },
	apertureArea: 1,
	absorbingArea: 1,
	lowestAltitude: 0,
	convection: 1,
};

export const pressureAt = standardPressure;
export const sun = (beam: number): Conditions => ({
	beam,
	ambient: 293.15,
	wind: 2,
	pressure: standardPressure(2350),
	altitude: 0.8,
});

/** Cold water of 10 °C, shower water of 40 °C, in a line of 2 bar above the air at an elevation. */
export const dutyAt = (elevation: number, line: number): Duty => ({
	cold: 283.15,
	wanted: 313.15,
	boiling: boilingPoint(standardPressure(elevation) + line),
});
export const duty = dutyAt(2350, 2e5);

export const vessel: OilVessel = {
	fluid: mineralOil(32),
	fill: 0.02,
	height: 0.35,
	diameter: 0.28,
	wallThickness: 0.002,
	wallConductivity: 50,
	wallHeatCapacity: 3.6e6,
	insulation: lagging(0.08),
	fittingsFactor: 1.3,
	coil: { ...plant.coil, coilDiameter: 0.2 },
	circulation: 4 / 60_000,
	charge: 423.15,
	limit: 438.15,
};

/** Copper tube of 15 mm from receiver to tap. */
export const outletPipe = (length: number, thickness: number): Pipe => ({
	length,
	innerDiameter: 0.013,
	outerDiameter: 0.015,
	wallConductivity: 390,
	wallHeatCapacity: 3.44e6,
	roughness: 1.5e-6,
	insulation: lagging(thickness),
});
/** Drawn at the focus itself. */
export const noPipe = outletPipe(0, 0);
export const atFocus: Arrangement = { kind: "direct", outlet: noPipe };

export const task: InstantTask = {
	duty,
	wantedFlow: undefined,
	arrangement: atFocus,
	levels: [400, 700, 1000].map(sun),
	day: undefined,
	largestAperture: 113,
};
