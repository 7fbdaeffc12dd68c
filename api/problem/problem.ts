import { z } from "@hono/zod-openapi";
import { type DomainCode, DomainError } from "../../src/index.ts";
import { POINTERS } from "./pointer.ts";

/** Every way a request can fail: the last part of the problem's `type`, its status and its title. */
const PROBLEMS = {
	"invalid-request": { status: 400, title: "The request does not match the contract" },
	"malformed-json": { status: 400, title: "The body is not JSON" },
	"malformed-request": { status: 400, title: "The request is not valid HTTP" },
	unauthorized: { status: 401, title: "A valid API key is required" },
	forbidden: { status: 403, title: "The API key does not allow this request" },
	"not-found": { status: 404, title: "There is no resource at this URL" },
	"method-not-allowed": { status: 405, title: "This URL does not support the method" },
	"not-acceptable": { status: 406, title: "No response format is acceptable to the client" },
	"request-timeout": { status: 408, title: "The request took too long to arrive" },
	"length-required": { status: 411, title: "The request must state the length of its body" },
	"payload-too-large": { status: 413, title: "The body is too large" },
	"unsupported-media-type": { status: 415, title: "The body must be plain JSON" },
	"out-of-range": { status: 422, title: "A value is outside the range of the model" },
	contradictory: { status: 422, title: "The request contradicts itself" },
	impossible: { status: 422, title: "The request is physically impossible" },
	"too-large": { status: 422, title: "The request needs too much work" },
	"no-convergence": { status: 422, title: "The computation found no solution" },
	"too-many-requests": { status: 429, title: "Too many requests" },
	"headers-too-large": { status: 431, title: "The request's headers are too large" },
	abandoned: { status: 499, title: "The client closed the connection" }, // only for logs and metrics
	internal: { status: 500, title: "Internal server error" },
	overloaded: { status: 503, title: "The service is overloaded" },
} as const;

export type ProblemKind = keyof typeof PROBLEMS;

/** Which problem each refusal of the core becomes. */
const KIND_OF_CODE = {
	out_of_range: "out-of-range",
	contradictory: "contradictory",
	impossible: "impossible",
	too_large: "too-large",
	no_convergence: "no-convergence",
} as const satisfies Record<DomainCode, ProblemKind>;

export const FAULT_CODES = [
	"missing",
	"unknown",
	"wrong_type",
	"out_of_bounds",
	"wrong_length",
	"wrong_format",
	"not_a_choice",
	"broken_rule",
	"out_of_range",
	"contradictory",
	"impossible",
	"too_large",
	"no_convergence",
] as const;

const FieldFault = z
	.strictObject({
		in: z.enum(["body", "query"]).openapi({ description: "Part of the request that has the fault." }),
		pointer: z.string().optional().openapi({
			description: "JSON pointer (RFC 6901) to the fault in the body. Absent for a fault in the query.",
		}),
		parameter: z.string().optional().openapi({
			description: "Name of the query parameter with the fault. Absent for a fault in the body.",
		}),
		detail: z.string().openapi({ description: "What is wrong and what to send, in one sentence." }),
		code: z.enum(FAULT_CODES).openapi({ description: "Machine-readable code of the fault." }),
	})
	.openapi("FieldFault");

export type FieldFault = z.infer<typeof FieldFault>;

export const Problem = z
	.strictObject({
		type: z.string().openapi({
			description: "Stable URN of the kind of problem.",
			example: "urn:raykettle:problem:invalid-request",
		}),
		title: z.string().openapi({ description: "Short description of the kind of problem." }),
		status: z.int().min(400).max(599).openapi({ description: "HTTP status code of the response." }),
		detail: z.string().openapi({ description: "What went wrong with this request, in one sentence." }),
		instance: z
			.string()
			.openapi({ description: "URN of this occurrence of the problem, with the request id." }),
		requestId: z.string().openapi({ description: "Id of the request, to quote in a report." }),
		errors: z
			.array(FieldFault)
			.optional()
			.openapi({ description: "Every fault found in the request. Absent if the request is not at fault." }),
	})
	.openapi("Problem", { description: "Why a request failed (RFC 9457)." });

export type Problem = z.infer<typeof Problem>;

/** Thrown anywhere at the edge to end a request with a problem. */
export class ProblemError extends Error {
	override readonly name = "ProblemError";
	constructor(
		readonly kind: ProblemKind,
		detail: string,
		readonly errors: readonly FieldFault[] = [],
		readonly headers: Readonly<Record<string, string>> = {},
	) {
		super(detail);
	}
}

/** A refusal for lack of capacity. Most responses take far less than the second after which to retry. */
export const overloaded = (detail: string): ProblemError =>
	new ProblemError("overloaded", detail, [], { "Retry-After": "1" });

/** The core's refusal as a problem, with the field or part of the request that is at fault. */
export function fromDomainError(error: DomainError, place: "body" | "query"): ProblemError {
	return refusal(error.code, sentenceOf(error), place, POINTERS[error.subject]);
}

/** A refusal at a place of the request. */
export function refusal(
	code: DomainCode,
	detail: string,
	place: "body" | "query",
	pointer: string,
): ProblemError {
	const where =
		place === "body" ? { pointer } : pointer === "" ? {} : { parameter: pointer.replace(/^\//, "") };
	return new ProblemError(KIND_OF_CODE[code], detail, [{ in: place, ...where, detail, code }]);
}

/** The problem of an error; undefined for an unforeseen error. */
export function problemFrom(error: unknown, place: "body" | "query"): ProblemError | undefined {
	if (error instanceof ProblemError) return error;
	return error instanceof DomainError ? fromDomainError(error, place) : undefined;
}

/** The core's message; a range gets a new sentence, because the core states it in SI units with all digits. */
function sentenceOf({ message, details: { name, value, low, high } }: DomainError): string {
	if (typeof low !== "number" || typeof high !== "number" || typeof value !== "number") return message;
	const short = (x: number) => String(Number(x.toPrecision(6)));
	return `${name} is ${short(value)} in SI units; the model covers ${short(low)} to ${short(high)}`;
}

export function problem(
	kind: ProblemKind,
	detail: string,
	requestId: string,
	errors: readonly FieldFault[],
): Problem {
	return {
		type: `urn:raykettle:problem:${kind}`,
		title: PROBLEMS[kind].title,
		status: PROBLEMS[kind].status,
		detail,
		instance: `urn:raykettle:request:${requestId}`,
		requestId,
		...(errors.length > 0 && { errors: [...errors] }),
	};
}

/** A problem from the HTTP status and headers that a library raised. */
export function fromStatus(status: number, detail: string, headers: Headers): ProblemError {
	const kinds = Object.keys(PROBLEMS) as ProblemKind[];
	const kind = kinds.find((name) => PROBLEMS[name].status === status) ?? "internal";
	return new ProblemError(kind, detail || PROBLEMS[kind].title, [], Object.fromEntries(headers));
}
