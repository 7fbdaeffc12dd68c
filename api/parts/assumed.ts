import { z } from "@hono/zod-openapi";

/** A value that the caller left out: what was taken instead, and why. In every answer that rests on one. */
export const Assumed = z
	.strictObject({
		pointer: z.string().openapi({
			description:
				"Which value: a JSON pointer (RFC 6901) into the body, or a slash and the query's parameter.",
			example: "/linkeTurbidity",
		}),
		value: z.union([z.string(), z.number(), z.boolean(), z.array(z.number()).readonly()]),
		why: z.string(),
	})
	.openapi("Assumed");
