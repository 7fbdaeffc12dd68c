import { GRAVITY } from "../constants.ts";
import { type Air, air } from "../fluids/air.ts";
import { nusseltCrossFlowFading } from "./cross-flow.ts";
import {
	nusseltHorizontalCylinder,
	nusseltHotPlateDown,
	nusseltHotPlateUp,
	nusseltVerticalPlate,
} from "./natural-convection.ts";
import { nusseltFlatPlate } from "./plate-flow.ts";
import { radiativeCoefficient } from "./radiation.ts";

/** Film coefficients from a surface to air and surroundings of one temperature [W/m²K]. */
export interface OuterFilm {
	readonly convective: number;
	readonly radiative: number;
}

/** A flat face: its orientation and the lengths that govern its convection. */
export interface Face {
	readonly facing: "up" | "down" | "side";
	readonly naturalLength: number; // its height if it is upright, else area over perimeter [m]
	readonly windLength: number; // in the direction of the wind [m]
	readonly emittance: number; // 0–1
}

/** Wind and buoyancy at right angles to each other: (a³ + b³)^⅓, after Churchill, AIChE J. 23 (1977) 10–16. */
function combined(forced: number, natural: number): number {
	if (forced === 0) return natural;
	return Math.cbrt(forced * forced * forced + natural * natural * natural);
}

function rayleigh(film: Air, difference: number, length: number): number {
	const scale = length / film.kinematicViscosity;
	return GRAVITY * film.expansion * difference * scale * scale * length * film.prandtl;
}

/** Film on the outside of a horizontal cylinder in air: Churchill–Bernstein in wind combined with Churchill–Chu in still air,
 *  and radiation to surroundings at air temperature. Defined also in still air and for equal temperatures.
 *  @param diameter   outer [m]     @param surface,ambient  temperatures [K]     @param wind  across the axis [m/s]
 *  @param pressure   of the air [Pa]     @param emittance  of the surface, 0–1
 *  Assumes horizontal and freely exposed; wind along the axis removes less heat.  Range and error: those of the two correlations */
export function cylinderFilm(
	diameter: number,
	surface: number,
	ambient: number,
	wind: number,
	pressure: number,
	emittance: number,
): OuterFilm {
	const film = air((surface + ambient) / 2, pressure);
	const viscosity = film.kinematicViscosity;
	const Ra = rayleigh(film, Math.abs(surface - ambient), diameter);
	const natural = nusseltHorizontalCylinder(Ra, film.prandtl);
	const forced = wind === 0 ? 0 : nusseltCrossFlowFading((wind * diameter) / viscosity, film.prandtl);
	return {
		convective: (combined(forced, natural) * film.conductivity) / diameter,
		radiative: radiativeCoefficient(emittance, surface, ambient),
	};
}

function naturalFace(face: Face, Ra: number, Pr: number, warm: boolean): number {
	switch (face.facing) {
		case "side":
			return nusseltVerticalPlate(Ra, Pr);
		case "up":
			return warm ? nusseltHotPlateUp(Ra) : nusseltHotPlateDown(Ra);
		case "down":
			return warm ? nusseltHotPlateDown(Ra) : nusseltHotPlateUp(Ra);
		default:
			return face.facing satisfies never;
	}
}

/** Film on a flat face in air, as for the cylinder; for a face colder than the air, up and down change places. */
export function plateFilm(
	face: Face,
	surface: number,
	ambient: number,
	wind: number,
	pressure: number,
): OuterFilm {
	const film = air((surface + ambient) / 2, pressure);
	const viscosity = film.kinematicViscosity;
	const Ra = rayleigh(film, Math.abs(surface - ambient), face.naturalLength);
	const natural =
		naturalFace(face, Ra, film.prandtl, surface >= ambient) * (film.conductivity / face.naturalLength);
	const forced =
		nusseltFlatPlate((wind * face.windLength) / viscosity, film.prandtl) *
		(film.conductivity / face.windLength);
	return {
		convective: combined(forced, natural),
		radiative: radiativeCoefficient(face.emittance, surface, ambient),
	};
}
