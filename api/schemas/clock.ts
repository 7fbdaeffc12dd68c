import { z } from "@hono/zod-openapi";

/** A date of the calendar. */
export const day = (description: string) => z.iso.date().meta({ description, examples: ["2025-01-15"] });

/** A time of day on the wall. */
export const clock = (description: string) =>
	z
		.string()
		.regex(/^(?:[01]\d|2[0-3]):[0-5]\d$/, "must be a time of day as HH:MM, such as 08:30")
		.meta({ description, examples: ["08:30"] });

/** An instant with its offset from UTC. */
export const instant = (description: string) =>
	z.iso.datetime({ offset: true }).meta({ description, examples: ["2025-01-15T08:30:00+01:00"] });
