import { z } from "@hono/zod-openapi";
import type { Basis } from "../../src/index.ts";

const BASES = [
	"standard",
	"handbook",
	"measured",
	"commonPractice",
	"derived",
	"lookedUp",
] as const satisfies readonly Basis[];

/** What a value rests on, as the answer states it. */
export const grounds = {
	reason: z.string().meta({ description: "Why this value suits such a plant." }),
	basis: z.enum(BASES).meta({
		description:
			"What the value rests on. `standard`: a standard, regulation or guideline. `handbook`: a textbook or review. `measured`: published measurements. `commonPractice`: what the trade usually does, without a source. `derived`: other values of the request. `lookedUp`: a table or map.",
	}),
	source: z
		.string()
		.meta({ description: "Publication that the value comes from. Absent where there is none." })
		.optional(),
	confirmed: z.boolean().meta({
		description: "False where the value was written from memory and not yet compared with its source.",
	}),
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
