import { GRAVITY } from "../constants.ts";
import { air } from "../fluids/air.ts";
import { nusseltHotPlateDown, nusseltHotPlateUp, nusseltVerticalPlate } from "../heat/natural-convection.ts";
import { nusseltFlatPlate } from "../heat/plate-flow.ts";
import { cube } from "../numeric/power.ts";
import type { ReceiverConditions } from "./conditions.ts";

/** Convection from a round face towards the dish, wind and buoyancy combined [W/m²K].
 *  Buoyancy: sum of cubes of an upright plate under the component g·cos θ of gravity and a level one facing down under the other;
 *  θ = 0 is the upright plate alone, θ = π/2 the level one. Wind: along a flat plate. Combined: (a³ + b³)^⅓.
 *  @param diameter          of the face [m]
 *  @param tilt              θ, angle below the horizontal: the altitude of the sun [rad], 0 to π/2
 *  @param surface,ambient   [K]; a face colder than the air, facing down, corresponds to a hot one facing up
 *  @param wind,pressure     [m/s], [Pa]
 *  Assumes  exposed to the wind, although the dish may shelter it; a smooth face instead of the grooves of the coil
 *  Error    15–20 %, that of its correlations
 *  Source   correlations: see src/heat; sum of cubes: Churchill, AIChE J. 23 (1977) 10–16; the split by tilt is an assumption */
export function facingDiscCoefficient(
	diameter: number,
	tilt: number,
	surface: number,
	ambient: number,
	wind: number,
	pressure: number,
): number {
	const film = air((surface + ambient) / 2, pressure);
	const viscosity = film.kinematicViscosity;
	const chord = (Math.PI / 4) * diameter; // mean height, and mean path of the wind
	const width = diameter / 4; // area over perimeter
	const buoyancy =
		(GRAVITY * film.expansion * Math.abs(surface - ambient) * film.prandtl) / (viscosity * viscosity);
	const upright = nusseltVerticalPlate(buoyancy * Math.cos(tilt) * cube(chord), film.prandtl) / chord;
	const levelRa = buoyancy * cube(width);
	const level =
		(Math.sin(tilt) * (surface < ambient ? nusseltHotPlateUp(levelRa) : nusseltHotPlateDown(levelRa))) /
		width;
	const forced = nusseltFlatPlate((wind * chord) / viscosity, film.prandtl) / chord;
	return film.conductivity * Math.cbrt(cube(upright) + cube(level) + cube(forced));
}

const FACE_DOWN = [1e5, 1e10] as const; // [-] Rayleigh numbers of McAdams's hot face that faces down, Incropera 6e, eq. 9.32
const FACE_UP = [1e4, 1e11] as const; // [-] of the hot face that faces up, eq. 9.30, 9.31

/** Whether `facingDiscCoefficient` is used outside its published range. Plates in wind and upright plates have no lower limit;
 *  the level plate counts wherever the disc faces below the horizontal. */
export function facingDiscOutsideRange(diameter: number, state: ReceiverConditions): boolean {
	const { wallTemperature, ambient, pressure, altitude } = state;
	if (wallTemperature === ambient || altitude === 0) return false;
	const film = air((wallTemperature + ambient) / 2, pressure);
	const Ra =
		(GRAVITY * film.expansion * Math.abs(wallTemperature - ambient) * film.prandtl * cube(diameter / 4)) /
		film.kinematicViscosity ** 2;
	const [least, most] = wallTemperature < ambient ? FACE_UP : FACE_DOWN;
	return !(Ra >= least && Ra <= most);
}
