import { storeHeatCapacity } from "./heat-content.ts";
import { meanOver } from "./integrals.ts";
import type { Driver } from "./reduced-model.ts";
import { type TestRun, waterTemperature } from "./run.ts";
import type { Fitted } from "./trajectory-fit.ts";

/** The lump of a run: the drivers of its heat content and their fitted factors. */
export interface Lump {
	readonly drivers: readonly Driver[];
	readonly fit: Fitted;
}

/** Rows and drivers of a real or extended run. */
export interface Rows {
	readonly time: ArrayLike<number>; // [N] [s]
	readonly drivers: readonly Driver[];
	readonly end: number; // water temperature at the last row [K]
}

const LAST = 3600; // [s] period at the end whose mean beam continues

/** The rows of a run continued with the sun and air of its end, heated like its lump, until it is hot or the time ends.
 *  A loss that is negative because of noise counts as zero: it hardly affects the heat to the water.
 *  @param hottest  water temperature at the end [K]
 *  @param longest  longest extension [s] */
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
