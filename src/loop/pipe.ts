import type { Fluid } from "../fluids/fluid.ts";
import { insulationConductivity, insulationMaterial } from "../heat/insulation.ts";
import { cylinderFilm } from "../heat/outer-film.ts";
import { fixedPoint } from "../numeric/fixed-point.ts";
import type { Pipe } from "./loop.ts";

const SURFACE_TOLERANCE = 1e-6; // [K] far below any measurement

/** Fluid and surroundings of a pipe at one position. */
export interface PipeConditions {
	readonly fluidTemperature: number; // [K]
	readonly insideFilm: number; // film coefficient on the inner surface [W/m²K]
	readonly ambient: number; // air and surroundings [K]
	readonly wind: number; // across the pipe [m/s]
	readonly pressure: number; // of the air [Pa]
}

/** Result of one pass: the loss coefficient and a better surface temperature. */
export interface PipePass {
	readonly coefficientPerMetre: number; // fluid to ambient [W/mK]
	readonly surfaceTemperature: number; // outer surface [K]
}

/** Heat loss per metre of pipe, with its resistances in series. */
export interface PipeHeatLoss extends PipePass {
	readonly perMetre: number; // [W/m]
	readonly insideResistance: number; // [mK/W], like the next three
	readonly wallResistance: number;
	readonly insulationResistance: number;
	readonly outsideResistance: number;
}

/** Radius of insulation at which a pipe loses the most heat: k/h [m]; thin insulation increases the loss of a bare pipe with a smaller radius.
 *  @param k  conductivity of the insulation [W/mK]     @param h  outer film, convection and radiation [W/m²K]
 *  Source  Incropera & DeWitt 6e, ex. 3.5; exact for a constant h     Check  tests/reference/pipe.reference.ts */
export function criticalRadius(k: number, h: number): number {
	return k / h;
}

/** Steady resistance of a cylindrical shell per metre of length, ln(outer/inner)/(2πk) [mK/W]; exact.
 *  @param inner,outer  both diameters or both radii [m]     @param k  conductivity [W/mK] */
export function shellResistance(inner: number, outer: number, k: number): number {
	return Math.log(outer / inner) / (2 * Math.PI * k);
}

/** Resistance of insulation per metre [mK/W], with the conductivity at the mean of its two faces. The hot face follows from the division of
 *  the temperature drop between fluid and surface, computed with the conductivity at their mean. */
export function insulationResistance(pipe: Pipe, before: number, fluid: number, surface: number): number {
	const { material: id, thickness, moisture } = pipe.insulation;
	if (thickness === 0) return 0;
	const material = insulationMaterial(id);
	const shape = shellResistance(pipe.outerDiameter, pipe.outerDiameter + 2 * thickness, 1);
	const first = shape / insulationConductivity(material, (fluid + surface) / 2, moisture);
	const hotFace = surface + ((fluid - surface) * first) / (first + before);
	return shape / insulationConductivity(material, (hotFace + surface) / 2, moisture);
}

/** Resistances from fluid to ambient, evaluated at a guessed surface temperature. */
function resistances(pipe: Pipe, conditions: PipeConditions, surface: number): PipeHeatLoss {
	const { fluidTemperature, insideFilm, ambient, wind, pressure } = conditions;
	const insideResistance = 1 / (Math.PI * pipe.innerDiameter * insideFilm);
	const wallResistance = shellResistance(pipe.innerDiameter, pipe.outerDiameter, pipe.wallConductivity);
	const before = insideResistance + wallResistance;
	const insulation = insulationResistance(pipe, before, fluidTemperature, surface);
	const diameter = pipe.outerDiameter + 2 * pipe.insulation.thickness;
	const film = cylinderFilm(diameter, surface, ambient, wind, pressure, pipe.insulation.surfaceEmittance);
	const outsideResistance = 1 / (Math.PI * diameter * (film.convective + film.radiative));
	const coefficientPerMetre = 1 / (before + insulation + outsideResistance);
	const perMetre = coefficientPerMetre * (fluidTemperature - ambient);
	return {
		perMetre,
		coefficientPerMetre,
		surfaceTemperature: ambient + perMetre * outsideResistance,
		insideResistance,
		wallResistance,
		insulationResistance: insulation,
		outsideResistance,
	};
}

/** One iteration of the heat loss, for a simulation that keeps the surface temperature from step to step.
 *  Each iteration reduces the error of the guess to a fifth or less.
 *  @param surfaceGuess  surface temperature of the previous step; initially between ambient and fluid [K] */
export function pipeLossPass(pipe: Pipe, conditions: PipeConditions, surfaceGuess: number): PipePass {
	return resistances(pipe, conditions, surfaceGuess);
}

/** Steady heat loss per metre of pipe to air and surroundings at ambient temperature.
 *  Inside film, wall, insulation at its mean temperature, and outside wind or still air with radiation, in series.
 *  @param pipe        dimensions and insulation; thickness 0 is a bare pipe with the emittance `surfaceEmittance`
 *  @param conditions  at the position
 *  Assumes  horizontal, dry, without rain or sun; joints and supports count as fittings
 *  Error    ± 10 % dry: outside film and conductivity of the product; ISO 12241:2008 agrees within 1.5 % insulated and
 *           7 % bare in still air; its film in wind, intended for large pipes, is 21 % lower on a bare 15 mm pipe
 *  Check    bare and insulated pipes, tests/reference/pipe.reference.ts */
export function pipeHeatLoss(pipe: Pipe, conditions: PipeConditions): PipeHeatLoss {
	const { ambient, fluidTemperature } = conditions;
	const pass = (surface: number): number => resistances(pipe, conditions, surface).surfaceTemperature;
	const surface = fixedPoint(pass, ambient, ambient, fluidTemperature, SURFACE_TOLERANCE);
	return resistances(pipe, conditions, surface);
}

/** Heat capacity per metre of pipe [J/mK]. That of the insulation, at half the temperature rise of the pipe up to a
 *  third of these for a thin pipe, is neglected: about 0.02 kWh a day for 8 m.
 *  @param temperature  of the fluid [K] */
export function pipeHeldHeat(
	pipe: Pipe,
	fluid: Fluid,
	temperature: number,
): { readonly fluid: number; readonly metal: number } {
	const inner = (Math.PI / 4) * pipe.innerDiameter * pipe.innerDiameter;
	const outer = (Math.PI / 4) * pipe.outerDiameter * pipe.outerDiameter;
	return {
		fluid: inner * fluid.density(temperature) * fluid.heatCapacity(temperature),
		metal: (outer - inner) * pipe.wallHeatCapacity,
	};
}
