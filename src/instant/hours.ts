import { linearInterpolation } from "../numeric/interpolate.ts";
import type { Weather } from "../sky/weather.ts";
import type { Conditions } from "./conditions.ts";
import type { Heater } from "./heater.ts";
import { type InstantRow, instantRow } from "./row.ts";
import { flowOf } from "./steady.ts";
import type { InstantDay, InstantTask } from "./task.ts";

/** A stretch of the day, unix times [s]. */
export interface Stretch {
	readonly from: number;
	readonly to: number;
}

/** A heater through the day. */
export interface InstantHours {
	readonly times: readonly number[]; // unix time, of each row [s]
	readonly rows: readonly InstantRow[];
	readonly held: readonly Stretch[]; // when what was asked is served, in order
	readonly window: Stretch; // when it is wanted
	readonly windowRows: readonly InstantRow[]; // those within it, and one at each end
	readonly heldShare: number; // of the window, 0–1
}

/** Rows at the instants of the weather, and when they serve what is asked.
 *  Between rows the flow is taken as a straight line, so a stretch's ends are good to a few minutes at rows of a quarter hour.
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
	const held = stretchesAbove(
		times,
		rows.map((row) => margin(row, task.wantedFlow)),
	);
	const within = rows.filter((_, i) => times[i]! > from && times[i]! < to);
	const heldInWindow = held.reduce(
		(sum, stretch) => sum + Math.max(0, Math.min(stretch.to, to) - Math.max(stretch.from, from)),
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
		altitude: Math.max(0, at(weather.sunAltitude)), // below the horizon there is no beam, and the dish looks level
		pressure,
	};
}

const HAIR = 1e-12; // [kg/s] puts a row that just serves, or just does not, on its side of the line

/** Flow above what is wanted [kg/s]: positive where the row serves. */
function margin(row: InstantRow, wantedFlow: number | undefined): number {
	const over = flowOf(row.steady) - (wantedFlow ?? 0);
	return row.serving === "serves" ? Math.max(over, HAIR) : -Math.max(Math.abs(over), HAIR);
}

/** Stretches over which a broken line stands above zero. */
function stretchesAbove(xs: readonly number[], ys: readonly number[]): Stretch[] {
	const stretches: Stretch[] = [];
	let from: number | undefined = ys[0]! > 0 ? xs[0]! : undefined;
	for (let i = 1; i < xs.length; i++) {
		const [before, after] = [ys[i - 1]!, ys[i]!];
		if (before > 0 === after > 0) continue;
		const crossing = xs[i - 1]! + ((xs[i]! - xs[i - 1]!) * before) / (before - after);
		if (from === undefined) from = crossing;
		else {
			stretches.push({ from, to: crossing });
			from = undefined;
		}
	}
	if (from !== undefined) stretches.push({ from, to: xs.at(-1)! });
	return stretches;
}
