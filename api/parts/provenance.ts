import { z } from "@hono/zod-openapi";
import type { Basis, Provenance as CoreProvenance } from "../../src/index.ts";

const BASES = [
	"standard",
	"handbook",
	"measured",
	"commonPractice",
	"derived",
	"lookedUp",
] as const satisfies readonly Basis[];

/** Where a value comes from, as the answer states it. */
export const provenance = {
	basis: z.enum(BASES).meta({
		description:
			"What the value rests on. `standard`: a standard, regulation or guideline. `handbook`: a textbook or review. `measured`: published measurements. `commonPractice`: what the trade usually does, without a source. `derived`: other values of the request. `lookedUp`: a table or map.",
	}),
	source: z
		.string()
		.meta({ description: "Publication that the value comes from. Absent where there is none." })
		.optional(),
	confirmed: z.boolean().meta({
		description: "False where the value was not yet compared with its source.",
	}),
};

export function wireProvenance({ basis, source, confirmed }: CoreProvenance): CoreProvenance {
	return { basis, ...(source !== undefined && { source }), confirmed };
}
