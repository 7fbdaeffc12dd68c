import type { Provenance } from "../provenance.ts";

/** A temperature limit of a kind of fluid; the maker's data sheet takes precedence. */
export interface FluidLimit extends Provenance {
	readonly temperature: number; // [K]
	readonly reason: string; // what happens beyond it, or how it was chosen
}

/** A heat transfer fluid: properties as functions of absolute temperature [K], at the pressure of the loop.
 *  Each function is defined, finite and positive over `range`. Beyond it the function keeps its end value, and the caller sets a flag. */
export interface Fluid extends Provenance {
	readonly id: string;
	readonly family: "water" | "glycol" | "mineralOil" | "vegetableOil"; // chemical family, which decides the source of its properties
	readonly name: string;
	readonly range: readonly [low: number, high: number]; // [K]
	readonly potable: boolean;
	readonly freezes: boolean; // true where ice can burst a pipe
	readonly density: (temperature: number) => number; // [kg/m³]
	readonly heatCapacity: (temperature: number) => number; // [J/kgK]
	readonly conductivity: (temperature: number) => number; // [W/mK]
	readonly viscosity: (temperature: number) => number; // dynamic [Pa s]
	readonly enthalpy: (temperature: number) => number; // [J/kg], zero at 273.15 K; its derivative is heatCapacity
	readonly temperatureAtEnthalpy: (enthalpy: number) => number; // [K], inverse of the above within 1e-9 K
	readonly limits: {
		readonly bulk: FluidLimit;
		readonly film: FluidLimit;
		readonly flash?: FluidLimit;
		readonly coldest: FluidLimit; // pour point or freezing point
	};
}
