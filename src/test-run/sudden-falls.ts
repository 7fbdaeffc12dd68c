import { ICE_POINT } from "../constants.ts";
import { storeHeatCapacity } from "./heat-content.ts";
import { type TestRun, waterTemperature } from "./run.ts";

/** A fall of the water temperature that is faster than a plant loses heat. */
export interface SuddenFall {
	readonly from: number; // row
	readonly to: number; // row
	readonly fall: number; // [K]
}

// All of these are our choice.
const WINDOW = 600; // [s] longest draw at a tap
const LEAST = 1; // [K] in addition to the error of the readings
const LEAKIEST = 60; // [W/K] greatest loss of a tank and its idle loop
const READINGS = 6; // standard deviations of a reading, a difference of two readings that no run reaches by chance

/** Rows between which water must have been drawn, added or stirred, the steepest fall first. No two share a row.
 *  @param noise  of a reading, standard deviation [K]; NaN without a fit */
export function suddenFalls(run: TestRun, noise: number): readonly SuddenFall[] {
	const margin = LEAST + 2 * run.resolution + (Number.isNaN(noise) ? 0 : READINGS * noise);
	const found: (SuddenFall & { readonly beyond: number })[] = [];
	for (let from = 0; from < run.time.length - 1; from++) {
		const start = waterTemperature(run, from);
		const excess = Math.max(0, start - (run.ambient?.[from] ?? ICE_POINT));
		const loss = (LEAKIEST * excess) / storeHeatCapacity(run, start); // [K/s]
		for (let to = from + 1; to < run.time.length; to++) {
			const span = run.time[to]! - run.time[from]!;
			if (span > WINDOW && to > from + 1) break;
			const fall = start - waterTemperature(run, to);
			const beyond = fall - margin - loss * span;
			if (beyond > 0) found.push({ from, to, fall, beyond });
		}
	}
	const apart: SuddenFall[] = [];
	for (const { from, to, fall } of found.toSorted((a, b) => b.beyond - a.beyond))
		if (apart.every((other) => to < other.from || from > other.to)) apart.push({ from, to, fall });
	return apart;
}
