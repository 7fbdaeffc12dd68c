import { GRAVITY } from "../constants.ts";
import { water } from "../fluids/water.ts";
import { logMeanDifference } from "../heat/exchanger.ts";
import { nusseltHelical } from "../heat/helical-coil.ts";
import { nusseltHorizontalCylinder } from "../heat/natural-convection.ts";
import { bracketedRoot } from "../numeric/root.ts";
import { type Duty, enthalpyRise } from "./duty.ts";
import type { OilVessel } from "./oil-vessel.ts";

/** Water that a coil in still oil heats to the wanted temperature. */
export interface CoilFlow {
	readonly massFlow: number; // [kg/s]
	readonly power: number; // [W]
	readonly hottestWall: number; // of the tube on the water side, at the outlet [K]
}

const NONE = (duty: Duty): CoilFlow => ({ massFlow: 0, power: 0, hottestWall: duty.wanted });
const TOLERANCE = 1e-4; // [K] of the outside of the tube
const DENSITY_STEP = 1; // [K] difference quotient for the expansion of the oil

/** Flow of water that leaves a coil in oil of uniform temperature at the wanted temperature.
 *  power = massFlow·(h_wanted − h_cold) = UA·ΔT_lm; inside film, wall, gap and outside film in series.
 *  Inside: helical flow at the mean of cold and wanted. Outside: natural convection of the oil around a horizontal tube,
 *  at the film temperature. Solved for the temperature of the outside of the tube, from which everything else follows.
 *  @param oilTemperature  [K]     @returns  no flow where the oil is not hotter than the wanted temperature
 *  Assumes  turns far enough apart for oil to flow between them; a uniform outside temperature for the film, the mean of the tube
 *  Error    inside as `nusseltHelical`, outside as `nusseltHorizontalCylinder`: ± 20 % of UA combined
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

/** Oil temperature at which the coil transfers a given power to water at the wanted temperature: inverse of `coilFlow` [K].
 *  @param power    to the water, above 0 [W]
 *  @param hottest  upper bound of the search [K]     @returns  undefined where hotter oil would be needed */
export function oilTemperatureFor(
	vessel: OilVessel,
	power: number,
	duty: Duty,
	hottest: number,
): number | undefined {
	const within = power * (waterFilm(vessel, duty)(power) + wallResistance(vessel));
	const excess = (oil: number): number => {
		const outer = oil > duty.wanted ? drivingDifference(oil, duty) - within : 0; // remaining difference across the oil film
		return outer > 0 ? outsideConductance(vessel, oil, oil - outer) * outer - power : -power;
	};
	return excess(hottest) < 0 ? undefined : bracketedRoot(excess, duty.wanted, hottest, TOLERANCE);
}

/** Flow and wall temperature of a coil that transfers a given power from oil of a given temperature. */
export function flowOfPower(vessel: OilVessel, oilTemperature: number, power: number, duty: Duty): CoilFlow {
	const drive = drivingDifference(oilTemperature, duty);
	const share = drive > 0 ? (power * waterFilm(vessel, duty)(power)) / drive : 0; // of the difference, across the water film
	return {
		massFlow: power / enthalpyRise(duty),
		power,
		hottestWall: duty.wanted + share * (oilTemperature - duty.wanted),
	};
}

function drivingDifference(oil: number, { cold, wanted }: Duty): number {
	return logMeanDifference(oil - cold, oil - wanted);
}

/** Resistance of the tube wall, and of the gap of a double wall [K/W]. */
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

/** Resistance of the water film in the tube [K/W] as a function of power [W]. */
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
