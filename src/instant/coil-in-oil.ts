import { GRAVITY } from "../constants.ts";
import type { Fluid } from "../fluids/fluid.ts";
import { water } from "../fluids/water.ts";
import { logMeanDifference } from "../heat/exchanger.ts";
import { nusseltHelical } from "../heat/helical-coil.ts";
import { nusseltHorizontalCylinder } from "../heat/natural-convection.ts";
import { bracketedRoot } from "../numeric/root.ts";
import { type Duty, enthalpyRise } from "./duty.ts";
import type { OilVessel } from "./oil-vessel.ts";

/** Water that a coil in still oil brings to the wanted temperature. */
export interface CoilFlow {
	readonly massFlow: number; // [kg/s]
	readonly power: number; // [W]
	readonly hottestWall: number; // of the tube that the water touches, where it leaves [K]
}

const NONE = (duty: Duty): CoilFlow => ({ massFlow: 0, power: 0, hottestWall: duty.wanted });
const TOLERANCE = 1e-4; // [K] of the tube's outside
const DENSITY_STEP = 1; // [K] of the difference quotient that gives the oil's expansion

/** The flow of water that leaves a coil in oil of one temperature at the wanted temperature.
 *  power = massFlow·(h_wanted − h_cold) = UA·ΔT_lm; inside film, wall, gap and outside film in series.
 *  Inside: helical flow at the mean of cold and wanted. Outside: natural convection of the oil around a horizontal tube,
 *  at the film temperature. Solved for the temperature of the tube's outside, from which all else follows.
 *  @param oilTemperature  [K]     @returns  no flow where the oil is no hotter than the water is wanted
 *  Assumes  turns far enough apart to draw fresh oil; one outside temperature for the film, the whole tube's mean
 *  Error    inside as `nusseltHelical`, outside as `nusseltHorizontalCylinder`: ± 20 % of UA together
 *  Source   Incropera & DeWitt 6e, ch. 3 and 11 (series resistances) */
export function coilFlow(vessel: OilVessel, oilTemperature: number, duty: Duty): CoilFlow {
	const rise = enthalpyRise(duty);
	if (!(oilTemperature > duty.wanted)) return NONE(duty);
	const { coil, fluid } = vessel;
	const drive = logMeanDifference(oilTemperature - duty.cold, oilTemperature - duty.wanted);
	const wall =
		(Math.log(coil.outerDiameter / coil.innerDiameter) / (2 * Math.PI * coil.wallConductivity) +
			coil.gapResistance / (Math.PI * coil.outerDiameter)) /
		coil.length;
	const at = (outside: number) => {
		const power = outsideConductance(vessel, fluid, oilTemperature, outside) * (oilTemperature - outside);
		const inside = 1 / insideConductance(vessel, duty, power / rise);
		const used = power * (inside + wall) + (oilTemperature - outside);
		return { power, inside, excess: used - drive };
	};
	const outside = bracketedRoot(
		(temperature) => at(temperature).excess,
		oilTemperature - drive,
		oilTemperature,
		TOLERANCE,
	);
	const { power, inside } = at(outside);
	const share = (power * inside) / drive; // of the whole drop that falls in the water's film
	const hottestWall = duty.wanted + share * (oilTemperature - duty.wanted);
	return { massFlow: power / rise, power, hottestWall };
}

/** h·A of the oil around the tube [W/K]. */
function outsideConductance(vessel: OilVessel, fluid: Fluid, oil: number, outside: number): number {
	const { outerDiameter, length } = vessel.coil;
	const film = (oil + outside) / 2;
	const density = fluid.density(film);
	const expansion = (fluid.density(film - DENSITY_STEP) / density - 1) / DENSITY_STEP;
	const conductivity = fluid.conductivity(film);
	const viscosity = fluid.viscosity(film);
	const Pr = (viscosity * fluid.heatCapacity(film)) / conductivity;
	const scale = (density / viscosity) * outerDiameter;
	const Ra = GRAVITY * expansion * Math.max(0, oil - outside) * scale * scale * outerDiameter * Pr;
	return nusseltHorizontalCylinder(Ra, Pr) * conductivity * Math.PI * length;
}

/** h·A of the water in the tube [W/K]. */
function insideConductance({ coil }: OilVessel, duty: Duty, massFlow: number): number {
	const mean = (duty.cold + duty.wanted) / 2;
	const viscosity = water.viscosity(mean);
	const conductivity = water.conductivity(mean);
	const Re = (4 * massFlow) / (Math.PI * coil.innerDiameter * viscosity);
	const Pr = (viscosity * water.heatCapacity(mean)) / conductivity;
	return (
		Math.PI * coil.length * conductivity * nusseltHelical(Re, Pr, coil.innerDiameter / coil.coilDiameter)
	);
}
