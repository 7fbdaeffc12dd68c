import { ICE_POINT } from "../constants.ts";
import type { Fluid } from "./fluid.ts";
import { heatContent } from "./heat-content.ts";
import { boundedScaled, SCALE } from "./temperature-scale.ts";
import { type ViscosityPoint, waltherLine, waltherViscosity } from "./walther.ts";

/** Data from which all properties of a petroleum oil follow. */
export interface PetroleumOil {
	readonly id: string;
	readonly name: string;
	readonly densityAt15C: number; // [kg/m³]
	readonly cold: ViscosityPoint;
	readonly hot: ViscosityPoint;
	readonly range: Fluid["range"];
	readonly limits: Fluid["limits"];
}

const REFERENCE = 288.15; // [K] 15 °C, reference temperature of stated densities
const WATER_AT_REFERENCE = 999.1; // [kg/m³] ± 0.01, IAPWS R7-97 at 15 °C
const KILOCALORIE = 4186.8; // [J] exact by convention, International Table
const LUBRICANT_EXPANSION = 0.6278; // [kg/m³K] K₁ of lubricating oils, API MPMS ch. 11.1 (ASTM D1250), as printed in a public copy

/** Density of a petroleum lubricating oil: ρ = ρ₁₅ exp(−αΔ(1 + 0.8 αΔ)), α = 0.6278/ρ₁₅, Δ = T − 288.15 K.
 *  Error   1 % from 0 to 160 °C for an engine oil
 *  Source  API MPMS ch. 11.1 / ASTM D1250, lubricating oils (group D)
 *  Check   Incropera & DeWitt, Table A.5   tests/reference/oil.reference.ts */
function densityFrom(densityAt15C: number, temperature: number): number {
	const contraction = (LUBRICANT_EXPANSION / densityAt15C) * (temperature - REFERENCE);
	return densityAt15C * Math.exp(-contraction * (1 + 0.8 * contraction));
}

/** A petroleum oil from its density at 15 °C and its viscosity at two temperatures.
 *  cp = 4186.8 (0.4024 + 0.000 81 t)/√s J/kgK, k = 0.1172 (1 − 0.000 54 t)/s W/mK, t in °C, s specific gravity
 *  Viscosity by Walther's equation, density by the petroleum tables.
 *  Range   cp and k 0–200 °C, extrapolated to the range of the oil; end values beyond
 *  Error   for an engine oil 0–157 °C: cp up to 5 % low, k 8–12 % low, density 1 %, viscosity see `waltherViscosity`
 *  Source  Cragoe, Thermal properties of petroleum products, NBS Misc. Publ. 97 (1929); a public copy prints the same cp, but k
 *          divided by the root of s, which is 7 % higher; that the original divides by s is from memory
 *  Check   Incropera & DeWitt, Table A.5   tests/reference/oil.reference.ts */
export function petroleumOil(oil: PetroleumOil): Fluid {
	const { densityAt15C, limits, range } = oil;
	const [low, high] = range;
	const gravity = densityAt15C / WATER_AT_REFERENCE;
	const root = Math.sqrt(gravity);
	const line = waltherLine(oil.cold, oil.hot);
	const bounded = (temperature: number) => ICE_POINT + SCALE * boundedScaled(temperature, low, high);
	const density = (temperature: number) => densityFrom(densityAt15C, bounded(temperature));
	return {
		id: oil.id,
		family: "mineralOil",
		name: oil.name,
		basis: "handbook",
		source: "Cragoe, NBS Misc. Publ. 97 (1929); ASTM D341 (Walther); API MPMS ch. 11.1",
		confirmed: false, // Cragoe's conductivity
		range,
		potable: false,
		freezes: false,
		density,
		conductivity: (temperature) => (0.1172 * (1 - 0.054 * boundedScaled(temperature, low, high))) / gravity,
		viscosity: (temperature) => waltherViscosity(line, bounded(temperature)) * density(temperature),
		...heatContent([(0.4024 * KILOCALORIE) / root, (0.081 * KILOCALORIE) / root], range),
		limits,
	};
}
