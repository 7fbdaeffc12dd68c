import { linearInterpolation } from "../numeric/interpolate.ts";
import { boilingPoint, standardPressure } from "../sky/atmosphere.ts";
import { extendedRun, type Lump, type Rows } from "./extended-run.ts";
import { storeHeatCapacity } from "./heat-content.ts";
import { type TestRun, waterTemperature } from "./run.ts";
import { runningSpans } from "./running.ts";

/** A change that makes a run more informative. */
export type BetterRun =
	| { readonly kind: "longerRun" | "hotterTank"; readonly added: number; readonly end: number } // [s], water at the end [K]
	| { readonly kind: "closerRows"; readonly spacing: number } // [s]
	| { readonly kind: "finerThermometer"; readonly noise: number }; // of a reading, standard deviation [K]

/** A changed run: its rows, and the remaining share of the reading noise. */
export interface Better {
	readonly change: BetterRun;
	readonly rows: Rows;
	readonly share: number; // remaining share of the reading noise
}

// All of these are our choice.
const LONGER = 10_800; // [s]
const LONGEST = 28_800; // [s] longest extension in sun
const SHORTEST = 1800; // [s]
const BELOW_BOILING = 10; // [K]
const HOTTEST = 363.15; // [K]
const CLOSE = 10; // [s]
const FINE = 0.01; // [K]

/** Highest water temperature of an extended run [K]. */
export function hottestOf({ tank }: TestRun, elevation: number): number {
	return Math.min(HOTTEST, boilingPoint(standardPressure(elevation) + tank.reliefPressure) - BELOW_BOILING);
}

/** The run extended by three hours, and until the water is hot, where the sun was still heating it at the end. */
export function extendedRuns(run: TestRun, lump: Lump, hottest: number): readonly Better[] {
	if (runningSpans(run).at(-1) !== true) return [];
	const found: Better[] = [];
	const add = (kind: "longerRun" | "hotterTank", rows: Rows) =>
		found.push({ change: { kind, added: added(rows), end: rows.end }, rows, share: 1 });
	const last = run.time[run.time.length - 1]!;
	const added = ({ time }: Rows) => time[time.length - 1]! - last;
	const longer = extendedRun(run, lump, hottest, LONGER);
	if (added(longer) >= SHORTEST) add("longerRun", longer);
	const hotter = extendedRun(run, lump, hottest, LONGEST);
	if (hotter.end >= hottest && added(hotter) >= added(longer) + SHORTEST) add("hotterTank", hotter);
	return found;
}

/** The same run with more frequent readings, and with a finer thermometer. */
export function betterReadings(run: TestRun, { fit }: Lump, now: Rows, mostRows: number): readonly Better[] {
	const found: Better[] = [];
	const last = run.time.length - 1;
	const duration = run.time[last]! - run.time[0]!;
	const spacing = CLOSE * Math.max(1, Math.ceil(duration / (mostRows - 1) / CLOSE));
	if (spacing <= duration / last / 2)
		found.push({ change: { kind: "closerRows", spacing }, rows: closer(now, spacing), share: 1 });
	const noise = fit.noise / storeHeatCapacity(run, waterTemperature(run, 0));
	if (noise > 2 * FINE)
		found.push({ change: { kind: "finerThermometer", noise: FINE }, rows: now, share: FINE / noise });
	return found;
}

function closer({ time, drivers, end }: Rows, spacing: number): Rows {
	const length = Math.floor((time[time.length - 1]! - time[0]!) / spacing) + 1;
	const times = Float64Array.from({ length }, (_, row) => time[0]! + row * spacing);
	const columns = drivers.map(({ name, column }) => ({
		name,
		column: times.map((instant) => linearInterpolation(time, column, instant)),
	}));
	return { time: times, drivers: columns, end };
}
