import type { Fluid } from "../fluids/fluid.ts";
import { helicalOutsideRange, nusseltHelical } from "../heat/helical-coil.ts";
import { hasTube, type Receiver, type TubeReceiver } from "./receiver.ts";

const COPPER_HEAT_CAPACITY = 8933 * 385; // [J/m³K] ± 1 %, Incropera & DeWitt 6e, Table A.1, pure copper at 300 K

/** Diameter, centre to centre, that the receiver's tube is wound to [m]: around the hollow, or the mean of a flat spiral's
 *  turns weighted by their length, ⅔ of the outer one (exact for turns that touch). */
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
 *  @param flow               [m³/s]; at rest the fluid still conducts, as developed laminar flow does: Nu 3.66
 *  Assumes  the tube's whole inside at one temperature: copper spreads the heat of the lit side around (to a few kelvin)
 *  Error    of `nusseltHelical`; the wall's own viscosity and the copper's resistance (< 0.01 K at 1 kW) are left out */
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

/** Whether the film in the receiver's tube is asked beyond what was measured; see `helicalOutsideRange`. */
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

/** Heat that the receiver holds per kelvin [J/K]: its copper tube and the fluid in it; the lagging, which follows late and
 *  only in part, is left out. An efficiency line states its own. */
export function receiverHeldHeatCapacity(receiver: Receiver, fluid: Fluid, temperature: number): number {
	if (!hasTube(receiver)) return receiver.heldHeatCapacity;
	const { innerDiameter, outerDiameter, length } = receiver.tube;
	const bore = (Math.PI / 4) * innerDiameter * innerDiameter * length;
	const metal = (Math.PI / 4) * outerDiameter * outerDiameter * length - bore;
	return metal * COPPER_HEAT_CAPACITY + bore * fluid.density(temperature) * fluid.heatCapacity(temperature);
}
