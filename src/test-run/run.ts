import type { Tank } from "../tank/tank.ts";

export type Column = ArrayLike<number>;

/** A measured run of a plant in rows, without draws from the tank. */
export interface TestRun {
	readonly time: Column; // unix times, strictly increasing [N] [s]
	readonly thermometers: readonly Column[]; // in equal shares of the tank's water, top first [M][N] [K]
	readonly beam: Column | undefined; // on a plane normal to it [N] [W/m²]
	readonly ambient: Column | undefined; // air temperature [N] [K]
	readonly wind: Column | undefined; // [N] [m/s]
	readonly oilIn: Column | undefined; // entering the receiver [N] [K]
	readonly oilOut: Column | undefined; // leaving the receiver [N] [K]
	readonly pumpOn: readonly boolean[] | undefined; // from each row to the next [N]
	readonly tank: Tank; // filled; its start temperatures are those of the first row
	readonly aperture: number | undefined; // of the dish, normal to the beam [m²]
	readonly resolution: number; // smallest step of a thermometer [K]
}

/** Mean of the thermometers at a row [K]. */
export function waterTemperature(run: TestRun, row: number): number {
	let sum = 0;
	for (const column of run.thermometers) sum += column[row]!;
	return sum / run.thermometers.length;
}

/** Standard uncertainty of that mean from the resolution of the thermometers alone [K]: each reading is uniformly distributed within half a step.
 *  u = r/√12 ÷ √M
 *  Source  JCGM 100:2008 (GUM), 4.3.7 */
export function readingUncertainty(run: TestRun): number {
	return run.resolution / Math.sqrt(12 * run.thermometers.length);
}
