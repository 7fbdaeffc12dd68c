import { heatContents, storeHeatCapacity } from "./heat-content.ts";
import { meanOver } from "./integrals.ts";
import { readingUncertainty, type TestRun, waterTemperature } from "./run.ts";

/** One interval of about ten minutes between two rows. */
export interface Interval {
	readonly from: number; // row
	readonly to: number; // row
	readonly length: number; // [s]
	readonly water: number; // mean temperature [K]
	readonly power: number; // stored in water and wall, without heat that was lost again [W]
	readonly uncertainty: number; // half-width of the power's 95 % interval, from the resolution of the thermometers [W]
	readonly beam: number; // mean [W/m²]; NaN unless measured
	readonly ambient: number; // mean [K]; NaN unless measured
}

export const INTERVAL = 600; // [s] ASAE S580
const SLACK = 1; // [s] jitter of a data logger

export const NORMAL_95 = 1.96; // standard normal at 0.975

/** The run divided into intervals of ten minutes, or slightly more for whole rows; an incomplete interval at the end is omitted. */
export function runIntervals(run: TestRun): readonly Interval[] {
	const heat = heatContents(run);
	const intervals: Interval[] = [];
	for (let from = 0, row = 1; row < run.time.length; row++) {
		if (run.time[row]! - run.time[from]! < INTERVAL - SLACK) continue;
		intervals.push(intervalOf(run, heat, from, row));
		from = row;
	}
	return intervals;
}

function intervalOf(run: TestRun, heat: Float64Array, from: number, to: number): Interval {
	const { time, beam, ambient } = run;
	const length = time[to]! - time[from]!;
	const water = meanOver(time, (row) => waterTemperature(run, row), from, to);
	const reading = storeHeatCapacity(run, water) * readingUncertainty(run);
	return {
		from,
		to,
		length,
		water,
		power: (heat[to]! - heat[from]!) / length,
		uncertainty: (NORMAL_95 * Math.SQRT2 * reading) / length,
		beam: beam ? meanOver(time, (row) => beam[row]!, from, to) : Number.NaN,
		ambient: ambient ? meanOver(time, (row) => ambient[row]!, from, to) : Number.NaN,
	};
}
