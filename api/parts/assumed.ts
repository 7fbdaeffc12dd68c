import { z } from "@hono/zod-openapi";
import { provenance } from "./provenance.ts";

/** What a value rests on, as the answer states it. */
export const grounds = {
	reason: z.string().meta({ description: "Why this value suits such a plant." }),
	...provenance,
};

/** A value that the request left out: what was used instead, and on what grounds. */
export const Assumed = z
	.strictObject({
		pointer: z.string().openapi({
			description:
				"Which value: a JSON pointer (RFC 6901) into the body, or a slash and the query's parameter.",
			example: "/linkeTurbidity",
		}),
		value: z
			.union([z.string(), z.number(), z.boolean(), z.array(z.number()).readonly()])
			.meta({ description: "Value used, in the unit of the field." }),
		...grounds,
	})
	.openapi("Assumed", { description: "A value that the request left out, and what was used instead." });
