import { z } from "@hono/zod-openapi";

/** A local time of day. */
export const clock = (description: string) =>
	z
		.string()
		.regex(/^(?:[01]\d|2[0-3]):[0-5]\d$/, "must be a time of day as HH:MM, such as 08:30")
		.meta({ description, examples: ["08:30"] });
