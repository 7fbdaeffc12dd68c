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

/** Why a plant derived from the request is outside the models. */
export const refusal = {
	code: z.enum(CODES).meta({ description: "Code of the refusal, as in a problem's `errors`." }),
	message: z.string().meta({ description: "The refusal as an English sentence." }),
};

export function wireRefusal(error: DomainError) {
	return { code: error.code, message: fromDomainError(error, "body").message };
}
