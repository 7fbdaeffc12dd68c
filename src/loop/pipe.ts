import type { Fluid } from "../fluids/fluid.ts";
import { insulationConductivity, insulationMaterial } from "../heat/insulation.ts";
import { cylinderFilm } from "../heat/outer-film.ts";
import { fixedPoint } from "../numeric/fixed-point.ts";
import type { Pipe } from "./loop.ts";

const SURFACE_TOLERANCE = 1e-6; // [K] far below any measurement

/** What a pipe lies in and carries at one place. */
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
	readonly surfaceTemperature: number; // outer skin [K]
}

/** Heat loss of a metre of pipe with the resistances it meets on its way out. */
export interface PipeHeatLoss extends PipePass {
	readonly perMetre: number; // [W/m]
	readonly insideResistance: number; // [mK/W], as the next three
	readonly wallResistance: number;
	readonly insulationResistance: number;
	readonly outsideResistance: number;
}

/** Radius of lagging at which a pipe loses most: k/h [m]; a thinner bare pipe loses more when thinly lagged.
 *  @param k  conductivity of the lagging [W/mK]     @param h  outer film, convection and radiation [W/m²K]
 *  Source  Incropera & DeWitt 6e, ex. 3.5; exact for a constant h     Check  tests/reference/pipe.reference.ts */
export function criticalRadius(k: number, h: number): number {
	return k / h;
}

/** Steady resistance of a cylindrical shell for a metre of length, ln(outer/inner)/(2πk) [mK/W]; exact.
 *  @param inner,outer  diameters or radii, alike [m]     @param k  conductivity [W/mK] */
export function shellResistance(inner: number, outer: number, k: number): number {
	return Math.log(outer / inner) / (2 * Math.PI * k);
}

/** Resistance of a metre of lagging [mK/W], its conductivity taken at the mean of its two faces. The hot face follows from the split of
 *  the drop between fluid and skin, found with a first conductivity half-way between the two. */
export function insulationResistance(pipe: Pipe, before: number, fluid: number, skin: number): number {
	const { material: id, thickness, moisture } = pipe.insulation;
	if (thickness === 0) return 0;
	const material = insulationMaterial(id);
	const shape = shellResistance(pipe.outerDiameter, pipe.outerDiameter + 2 * thickness, 1);
	const first = shape / insulationConductivity(material, (fluid + skin) / 2, moisture);
	const hotFace = skin + ((fluid - skin) * first) / (first + before);
	return shape / insulationConductivity(material, (hotFace + skin) / 2, moisture);
}

/** The way out of a pipe, evaluated at a guessed skin temperature. */
function resistances(pipe: Pipe, conditions: PipeConditions, skin: number): PipeHeatLoss {
	const { fluidTemperature, insideFilm, ambient, wind, pressure } = conditions;
	const insideResistance = 1 / (Math.PI * pipe.innerDiameter * insideFilm);
	const wallResistance = shellResistance(pipe.innerDiameter, pipe.outerDiameter, pipe.wallConductivity);
	const before = insideResistance + wallResistance;
	const lagging = insulationResistance(pipe, before, fluidTemperature, skin);
	const diameter = pipe.outerDiameter + 2 * pipe.insulation.thickness;
	const film = cylinderFilm(diameter, skin, ambient, wind, pressure, pipe.insulation.surfaceEmittance);
	const outsideResistance = 1 / (Math.PI * diameter * (film.convective + film.radiative));
	const coefficientPerMetre = 1 / (before + lagging + outsideResistance);
	const perMetre = coefficientPerMetre * (fluidTemperature - ambient);
	return {
		perMetre,
		coefficientPerMetre,
		surfaceTemperature: ambient + perMetre * outsideResistance,
		insideResistance,
		wallResistance,
		insulationResistance: lagging,
		outsideResistance,
	};
}

/** One pass towards the heat loss, for a march that carries the skin temperature from step to step.
 *  Each pass cuts the error of the guess at least fivefold.
 *  @param surfaceGuess  skin temperature of the step before; between ambient and fluid for a start [K] */
export function pipeLossPass(pipe: Pipe, conditions: PipeConditions, surfaceGuess: number): PipePass {
	return resistances(pipe, conditions, surfaceGuess);
}

/** Steady heat loss of a metre of pipe to air and surroundings at ambient temperature.
 *  Inside film, wall, lagging at its mean temperature, and outside wind or still air with radiation, in series.
 *  @param pipe        dimensions and lagging; thickness 0 is a bare pipe with the emittance of the insulation's surface
 *  @param conditions  at the place
 *  Assumes  horizontal, no rain, no sun on it, dry skin; joints and supports are counted as fittings
 *  Error    ± 10 % dry: outside film and conductivity of the product; the ISO 12241:2008 scheme agrees within 1.5 % lagged and
 *           7 % bare in still air; its film for wind, made for large pipes, runs 21 % lower on a bare 15 mm pipe
 *  Check    bare and lagged pipes, tests/reference/pipe.reference.ts */
export function pipeHeatLoss(pipe: Pipe, conditions: PipeConditions): PipeHeatLoss {
	const { ambient, fluidTemperature } = conditions;
	const pass = (skin: number): number => resistances(pipe, conditions, skin).surfaceTemperature;
	const skin = fixedPoint(pass, ambient, ambient, fluidTemperature, SURFACE_TOLERANCE);
	return resistances(pipe, conditions, skin);
}

/** Heat capacity of what a metre of pipe holds [J/mK]; the lagging's own, at half the pipe's rise up to a
 *  third of these on a thin pipe, is dropped: some 0.02 kWh a day for 8 m.
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
