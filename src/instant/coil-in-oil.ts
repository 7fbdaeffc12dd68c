import { GRAVITY } from "../constants.ts";
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
	if (!(oilTemperature > duty.wanted)) return NONE(duty);
	const drive = drivingDifference(oilTemperature, duty);
	const wall = wallResistance(vessel);
	const inside = waterFilm(vessel, duty);
	const powerAt = (outside: number) =>
		outsideConductance(vessel, oilTemperature, outside) * (oilTemperature - outside);
	const excess = (outside: number) => {
		const power = powerAt(outside);
		return power * (inside(power) + wall) + (oilTemperature - outside) - drive;
	};
	const power = powerAt(bracketedRoot(excess, oilTemperature - drive, oilTemperature, TOLERANCE));
	return flowOfPower(vessel, oilTemperature, power, duty);
}

/** The oil's temperature at which the coil brings so much heat to water at the wanted temperature: inverse of `coilFlow` [K].
 *  @param power    to the water, above 0 [W]
 *  @param hottest  that is looked for [K]     @returns  undefined where hotter oil would be needed */
export function oilTemperatureFor(
	vessel: OilVessel,
	power: number,
	duty: Duty,
	hottest: number,
): number | undefined {
	const within = power * (waterFilm(vessel, duty)(power) + wallResistance(vessel));
	const surplus = (oil: number): number => {
		const outer = oil > duty.wanted ? drivingDifference(oil, duty) - within : 0; // left for the oil's film
		return outer > 0 ? outsideConductance(vessel, oil, oil - outer) * outer - power : -power;
	};
	return surplus(hottest) < 0 ? undefined : bracketedRoot(surplus, duty.wanted, hottest, TOLERANCE);
}

/** What the coil does that passes a power from oil of a temperature. */
export function flowOfPower(vessel: OilVessel, oilTemperature: number, power: number, duty: Duty): CoilFlow {
	const drive = drivingDifference(oilTemperature, duty);
	const share = drive > 0 ? (power * waterFilm(vessel, duty)(power)) / drive : 0; // of the drop, in the water's film
	return {
		massFlow: power / enthalpyRise(duty),
		power,
		hottestWall: duty.wanted + share * (oilTemperature - duty.wanted),
	};
}

function drivingDifference(oil: number, { cold, wanted }: Duty): number {
	return logMeanDifference(oil - cold, oil - wanted);
}

/** Of the tube's wall, and of the gap of a double one [K/W]. */
function wallResistance({ coil }: OilVessel): number {
	const metal = Math.log(coil.outerDiameter / coil.innerDiameter) / (2 * Math.PI * coil.wallConductivity);
	return (metal + coil.gapResistance / (Math.PI * coil.outerDiameter)) / coil.length;
}

/** h·A of the oil around the tube [W/K]. */
function outsideConductance({ coil, fluid }: OilVessel, oil: number, outside: number): number {
	const { outerDiameter, length } = coil;
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

/** Resistance of the water's film in the tube [K/W], by the power that it carries away [W]. */
function waterFilm({ coil }: OilVessel, duty: Duty): (power: number) => number {
	const mean = (duty.cold + duty.wanted) / 2;
	const viscosity = water.viscosity(mean);
	const conductivity = water.conductivity(mean);
	const Pr = (viscosity * water.heatCapacity(mean)) / conductivity;
	const ratio = coil.innerDiameter / coil.coilDiameter;
	const reynoldsPerWatt = 4 / (enthalpyRise(duty) * Math.PI * coil.innerDiameter * viscosity);
	return (power) =>
		1 / (Math.PI * coil.length * conductivity * nusseltHelical(power * reynoldsPerWatt, Pr, ratio));
}
