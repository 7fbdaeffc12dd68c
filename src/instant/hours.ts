import { linearInterpolation } from "../numeric/interpolate.ts";
import type { Weather } from "../sky/weather.ts";
import type { Conditions } from "./conditions.ts";
import type { Heater } from "./heater.ts";
import { type InstantRow, instantRow } from "./row.ts";
import { flowOf } from "./steady.ts";
import type { InstantDay, InstantTask } from "./task.ts";

/** A period of the day, unix times [s]. */
export interface Period {
	readonly from: number;
	readonly to: number;
}

/** Results of a heater over the day. */
export interface InstantHours {
	readonly times: readonly number[]; // unix time, of each row [s]
	readonly rows: readonly InstantRow[];
	readonly held: readonly Period[]; // periods in which the demand is met, in order
	readonly window: Period; // period of the demand
	readonly windowRows: readonly InstantRow[]; // rows within the window, and one at each end
	readonly heldShare: number; // of the window, 0–1
}

/** Rows at the instants of the weather, and the periods in which they meet the demand.
 *  The flow is linear between rows: with rows of a quarter hour, the ends of a period are accurate to a few minutes.
 *  @param pressure  of the air [Pa] */
export function instantHours(
	heater: Heater,
	task: InstantTask,
	{ weather, from, to }: InstantDay,
	pressure: number,
): InstantHours {
	const times = Array.from(weather.time);
	const rowAt = (time: number) => instantRow(heater, task, conditionsAt(weather, time, pressure));
	const rows = times.map(rowAt);
	const held = positivePeriods(
		times,
		rows.map((row) => margin(row, task.wantedFlow)),
	);
	const within = rows.filter((_, i) => times[i]! > from && times[i]! < to);
	const heldInWindow = held.reduce(
		(sum, period) => sum + Math.max(0, Math.min(period.to, to) - Math.max(period.from, from)),
		0,
	);
	return {
		times,
		rows,
		held,
		window: { from, to },
		windowRows: [rowAt(from), ...within, rowAt(to)],
		heldShare: heldInWindow / (to - from),
	};
}

function conditionsAt(weather: Weather, time: number, pressure: number): Conditions {
	const at = (column: Float64Array) => linearInterpolation(weather.time, column, time);
	return {
		beam: at(weather.beam),
		ambient: at(weather.ambient),
		wind: at(weather.wind),
		altitude: Math.max(0, at(weather.sunAltitude)), // below the horizon there is no beam, and the dish is level
		pressure,
	};
}

const SMALLEST = 1e-12; // [kg/s] keeps the sign of a row that only just meets, or misses, the demand

/** Flow above the demand [kg/s]: positive where the row meets it. */
function margin(row: InstantRow, wantedFlow: number | undefined): number {
	const over = flowOf(row.steady) - (wantedFlow ?? 0);
	return row.serving === "serves" ? Math.max(over, SMALLEST) : -Math.max(Math.abs(over), SMALLEST);
}

/** Periods in which a piecewise linear function is positive. */
function positivePeriods(xs: readonly number[], ys: readonly number[]): Period[] {
	const periods: Period[] = [];
	let from: number | undefined = ys[0]! > 0 ? xs[0]! : undefined;
	for (let i = 1; i < xs.length; i++) {
		const [before, after] = [ys[i - 1]!, ys[i]!];
		if (before > 0 === after > 0) continue;
		const crossing = xs[i - 1]! + ((xs[i]! - xs[i - 1]!) * before) / (before - after);
		if (from === undefined) from = crossing;
		else {
			periods.push({ from, to: crossing });
			from = undefined;
		}
	}
	if (from !== undefined) periods.push({ from, to: xs.at(-1)! });
	return periods;
}
