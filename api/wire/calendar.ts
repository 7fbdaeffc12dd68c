import { z } from "@hono/zod-openapi";

// The sun's position is checked against an ephemeris for 1990 to 2050; these bounds leave room on either side.
const FIRST_YEAR = 1950;
const LAST_YEAR = 2100;

const within = (text: string) => {
	const year = Number(text.slice(0, 4));
	return year >= FIRST_YEAR && year <= LAST_YEAR;
};
const message = `must be within the years ${FIRST_YEAR} to ${LAST_YEAR}`;

/** An instant with its offset from UTC. */
export const instant = (description: string) =>
	z.iso
		.datetime({ offset: true })
		.refine(within, message)
		.meta({ description: `${description} ISO 8601 with an offset or Z, ${FIRST_YEAR} to ${LAST_YEAR}.` });

/** A day of the calendar. */
export const calendarDate = (description: string) =>
	z.iso
		.date()
		.refine(within, message)
		.meta({ description: `${description} ISO 8601, ${FIRST_YEAR} to ${LAST_YEAR}.` });

/** The first day of a month, counted from January of a year: month 13 is January of the next year. */
export function firstOfMonth(year: number, month: number): string {
	return new Date(Date.UTC(year, month - 1, 1)).toISOString().slice(0, 10);
}

/** The day before a date. */
export function dayBefore(date: string): string {
	return new Date(Date.parse(date) - 86_400_000).toISOString().slice(0, 10);
}
