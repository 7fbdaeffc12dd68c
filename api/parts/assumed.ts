import { z } from "@hono/zod-openapi";
import { provenance } from "./provenance.ts";

/** What a value is based on, as the response states it. */
export const grounds = {
	reason: z.string().meta({ description: "Why the value suits a plant of this kind." }),
	...provenance,
};

/** A value omitted from the request: what was used instead, and why. */
export const Assumed = z
	.strictObject({
		pointer: z.string().openapi({
			description:
				"JSON pointer (RFC 6901) to the omitted value in the body. For a query: a slash and the parameter's name.",
			example: "/linkeTurbidity",
		}),
		value: z
			.union([z.string(), z.number(), z.boolean(), z.array(z.number()).readonly()])
			.meta({ description: "Value used instead of the omitted one, in the unit of its field." }),
		...grounds,
	})
	.openapi("Assumed", { description: "A value omitted from the request: what was used instead, and why." });
