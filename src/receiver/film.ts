import type { Fluid } from "../fluids/fluid.ts";
import { helicalOutsideRange, nusseltHelical } from "../heat/helical-coil.ts";
import { hasTube, type Receiver, type TubeReceiver } from "./receiver.ts";

const COPPER_HEAT_CAPACITY = 8933 * 385; // [J/m³K] ± 1 %, Incropera & DeWitt 6e, Table A.1, pure copper at 300 K

/** Winding diameter of the receiver's tube, centre to centre [m]: around the interior of a cavity, or the mean of a flat spiral's
 *  turns weighted by length, ⅔ of the outer diameter (exact for touching turns). */
export function woundDiameter(receiver: TubeReceiver): number {
	switch (receiver.kind) {
		case "cavity":
			return receiver.innerDiameter + receiver.tube.outerDiameter;
		case "openCoil":
		case "glazedCoil":
			return (2 / 3) * receiver.apertureDiameter;
		default:
			return receiver satisfies never;
	}
}

/** Conductance h·A from the receiver's tube to the fluid in it [W/K].
 *  @param fluid,temperature  the fluid at its mean temperature [K]
 *  @param flow               [m³/s]; at rest the value of developed laminar flow: Nu 3.66
 *  Assumes  a uniform temperature around the inside of the tube: copper conducts the heat of the lit side around it (within a few kelvins)
 *  Error    that of `nusseltHelical`; viscosity at the wall and the resistance of the copper (< 0.01 K at 1 kW) are neglected */
export function receiverFilmConductance(
	receiver: TubeReceiver,
	fluid: Fluid,
	temperature: number,
	flow: number,
): number {
	const { innerDiameter, length } = receiver.tube;
	const conductivity = fluid.conductivity(temperature);
	const Re = reynolds(innerDiameter, fluid, temperature, flow);
	const Pr = (fluid.viscosity(temperature) * fluid.heatCapacity(temperature)) / conductivity;
	return Math.PI * length * conductivity * nusseltHelical(Re, Pr, innerDiameter / woundDiameter(receiver));
}

/** Whether the film in the receiver's tube is outside the measured range; see `helicalOutsideRange`. */
export function receiverFilmOutsideRange(
	receiver: TubeReceiver,
	fluid: Fluid,
	temperature: number,
	flow: number,
): boolean {
	const { innerDiameter } = receiver.tube;
	const Re = reynolds(innerDiameter, fluid, temperature, flow);
	const Pr =
		(fluid.viscosity(temperature) * fluid.heatCapacity(temperature)) / fluid.conductivity(temperature);
	return helicalOutsideRange(Re, Pr, innerDiameter / woundDiameter(receiver));
}

function reynolds(diameter: number, fluid: Fluid, temperature: number, flow: number): number {
	return (4 * flow * fluid.density(temperature)) / (Math.PI * diameter * fluid.viscosity(temperature));
}

/** Heat capacity of the receiver [J/K]: its copper tube and the fluid in it. The insulation, which follows slowly and
 *  only partly, is neglected. For an efficiency line it is an input. */
export function receiverHeldHeatCapacity(receiver: Receiver, fluid: Fluid, temperature: number): number {
	if (!hasTube(receiver)) return receiver.heldHeatCapacity;
	const { innerDiameter, outerDiameter, length } = receiver.tube;
	const bore = (Math.PI / 4) * innerDiameter * innerDiameter * length;
	const metal = (Math.PI / 4) * outerDiameter * outerDiameter * length - bore;
	return metal * COPPER_HEAT_CAPACITY + bore * fluid.density(temperature) * fluid.heatCapacity(temperature);
}
