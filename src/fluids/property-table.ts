import { outOfRange, requireWithin } from "../errors.ts";
import type { Fluid } from "./fluid.ts";

/** Properties of a fluid in columns, one row per temperature. */
export interface PropertyTable {
	readonly temperature: readonly number[]; // [K]
	readonly density: readonly number[]; // [kg/m³]
	readonly heatCapacity: readonly number[]; // [J/kgK]
	readonly conductivity: readonly number[]; // [W/mK]
	readonly viscosity: readonly number[]; // dynamic [Pa s]
	readonly kinematicViscosity: readonly number[]; // [m²/s]
	readonly Prandtl: readonly number[]; // [-]
}

const MOST_ROWS = 1000;

/** Evenly spaced temperatures between two limits, with a shorter last step where needed [K]. */
export function evenTemperatures(from: number, to: number, step: number): readonly number[] {
	requireWithin("fluid.tableRows", (to - from) / step, 0, MOST_ROWS);
	const whole = Math.floor((to - from) / step + 1e-9); // 1e-9 tolerates rounding of the last step
	const temperatures = Array.from({ length: whole + 1 }, (_, i) => from + i * step);
	if (to - temperatures[whole]! > 1e-6 * step) temperatures.push(to);
	return temperatures;
}

/** Properties of a fluid at given temperatures [K].
 *  Range   that of the fluid, else DomainError out_of_range, because beyond it the fluid keeps its end values */
export function propertyTable(fluid: Fluid, temperatures: readonly number[]): PropertyTable {
	const [low, high] = fluid.range;
	for (const t of temperatures)
		if (!(t >= low && t <= high))
			throw outOfRange("fluid.temperature", `temperature of ${fluid.name}`, t, low, high);
	const column = (property: (temperature: number) => number) => temperatures.map(property);
	return {
		temperature: temperatures,
		density: column(fluid.density),
		heatCapacity: column(fluid.heatCapacity),
		conductivity: column(fluid.conductivity),
		viscosity: column(fluid.viscosity),
		kinematicViscosity: column((t) => fluid.viscosity(t) / fluid.density(t)),
		Prandtl: column((t) => (fluid.viscosity(t) * fluid.heatCapacity(t)) / fluid.conductivity(t)),
	};
}
