import { dayBefore, firstOfMonth } from "../../wire/calendar.ts";
import { instantOf } from "../../wire/time-zone.ts";

export type Season = "winter" | "spring" | "summer" | "autumn";

/** Whole months by the local calendar, with their instants. */
export interface Period {
	readonly name: "month" | "year" | Season;
	readonly from: string; // first day
	readonly to: string; // last day
	readonly start: number; // unix time [s]
	readonly end: number; // unix time [s]
}

const NORTHERN = ["winter", "spring", "summer", "autumn"] as const;
const SOUTHERN = ["summer", "autumn", "winter", "spring"] as const;

/** The calendar periods around a date: its month, its year, and the four seasons as three whole months each,
 *  from December of the year before, named for the hemisphere. */
export function periodsOf(date: string, latitude: number, zone: string): readonly Period[] {
	const [year, month] = date.split("-").map(Number) as [number, number, number];
	const seasons = latitude >= 0 ? NORTHERN : SOUTHERN;
	return [
		months("month", year, month, 1, zone),
		...seasons.map((season, i) => months(season, year, 3 * i, 3, zone)),
		months("year", year, 1, 12, zone),
	];
}

/** A run of whole months; month 0 is December of the year before. */
function months(name: Period["name"], year: number, first: number, count: number, zone: string): Period {
	const from = firstOfMonth(year, first);
	const next = firstOfMonth(year, first + count);
	const start = instantOf(from, "00:00", zone);
	return { name, from, to: dayBefore(next), start, end: instantOf(next, "00:00", zone) };
}
