/** A limit of a fluid with where the figure comes from; generic for the kind, never a maker's data sheet. */
export interface FluidLimit {
	readonly temperature: number; // [K]
	readonly source: string;
}

/** A heat-carrying liquid: properties against absolute temperature [K], at the pressure of the loop.
 *  Each function is defined, finite and positive over `range`; beyond it the end value is held, and the caller flags it. */
export interface Fluid {
	readonly id: string;
	readonly family: "water" | "glycol" | "mineralOil" | "vegetableOil"; // what it is made of, and so what its properties rest on
	readonly name: string;
	readonly source: string;
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
