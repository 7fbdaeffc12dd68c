import { meanOver } from "./accumulate.ts";
import { storeHeatCapacity } from "./heat-content.ts";
import type { Driver } from "./reduced-model.ts";
import { type TestRun, waterTemperature } from "./run.ts";
import type { Fitted } from "./trajectory-fit.ts";

/** A run's lump: the drivers of its heat content and what they were found to weigh. */
export interface Lump {
	readonly drivers: readonly Driver[];
	readonly fit: Fitted;
}

/** Rows and drivers that a run has, or would have. */
export interface Rows {
	readonly time: ArrayLike<number>; // [N] [s]
	readonly drivers: readonly Driver[];
	readonly end: number; // water temperature at the last row [K]
}

const LAST = 3600; // [s] whose mean beam goes on

/** The rows of a run that goes on in the sun and the air of its end, as its own lump would warm, until it is hot or the time is up.
 *  A loss that noise brought below zero counts as none: what the water gains hangs little on it.
 *  @param hottest  water temperature at which it ends [K]
 *  @param longest  that it goes on [s] */
export function extendedRun(run: TestRun, { drivers, fit }: Lump, hottest: number, longest: number): Rows {
	const last = run.time.length - 1;
	const beam = endBeam(run);
	const air = run.ambient![last]!;
	const weight = (name: Driver["name"]) => fit.values[drivers.findIndex((driver) => driver.name === name)]!;
	const aperture = weight("aperture");
	const loss = Math.max(0, weight("lossRunning"));
	const step = (run.time[last]! - run.time[0]!) / last;
	const [time, columns] = [Array.from(run.time), drivers.map(({ column }) => Array.from(column))];
	let end = waterTemperature(run, last);
	for (let elapsed = step; elapsed <= longest && end < hottest; elapsed += step) {
		const excess = end - air;
		time.push(run.time[last]! + elapsed);
		for (const [k, { name }] of drivers.entries()) {
			const rate = name === "aperture" ? beam : name === "lossRunning" ? -excess : 0;
			columns[k]!.push(columns[k]!.at(-1)! + rate * step);
		}
		end += ((aperture * beam - loss * excess) * step) / storeHeatCapacity(run, end);
	}
	return {
		time,
		end,
		drivers: drivers.map(({ name }, k) => ({ name, column: Float64Array.from(columns[k]!) })),
	};
}

function endBeam({ time, beam }: TestRun): number {
	const last = time.length - 1;
	let from = last - 1;
	while (from > 0 && time[last]! - time[from]! < LAST) from--;
	return meanOver(time, (row) => beam![row]!, from, last);
}
