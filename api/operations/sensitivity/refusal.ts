import { z } from "@hono/zod-openapi";
import type { DomainCode, DomainError } from "../../../src/index.ts";
import { fromDomainError } from "../../problem/problem.ts";

const CODES = [
	"out_of_range",
	"contradictory",
	"impossible",
	"too_large",
	"no_convergence",
] as const satisfies readonly DomainCode[];

/** Why the models did not answer for a plant that the request only led to. */
export const refusal = {
	code: z.enum(CODES).meta({ description: "Why not, as in a problem's `errors`." }),
	message: z.string().meta({ description: "The same in English." }),
};

export function wireRefusal(error: DomainError) {
	return { code: error.code, message: fromDomainError(error, "body").message };
}
