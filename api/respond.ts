import type { Context } from "hono";
import { acceptable } from "./accept.ts";
import { jsonBody } from "./body.ts";
import { LIMITS } from "./config.ts";
import { entityTag, matches } from "./headers.ts";
import { checkedInput } from "./input.ts";
import { type MEDIA_TYPES, mediaTypes, type Operation } from "./operation.ts";
import { pathNames } from "./path.ts";
import { ProblemError, problem } from "./problem.ts";
import { queryOf } from "./query.ts";
import { wireValue } from "./wire.ts";

export type Edge = { Variables: { requestId: string } };
export type EdgeContext = Context<Edge>;

/** What a request asks of an operation: its checked input, and beside it what was sent. */
async function inputOf(
	c: EdgeContext,
	operation: Operation,
): Promise<readonly [input: unknown, given: unknown]> {
	const isQuery = operation.method === "get";
	const given = isQuery ? parametersOf(c, operation) : await jsonBody(c.req, LIMITS.bodyBytes.value);
	return [checkedInput(operation, given, c.req.path), given];
}

/** A GET's query, and beside it what stands in the path. */
function parametersOf(c: EdgeContext, operation: Operation): Readonly<Record<string, string | string[]>> {
	const query = queryOf(c.req.url);
	const names = pathNames(operation.path);
	const doubled = names.filter((name) => Object.hasOwn(query, name));
	if (doubled.length > 0)
		throw new ProblemError(
			"invalid-request",
			`The query repeats what stands in the path: ${doubled.join(", ")}`,
			doubled.map((parameter) => ({
				in: "query",
				parameter,
				detail: `${parameter} stands in the path; the query may not hold it`,
				code: "unknown",
			})),
		);
	return names.length === 0 ? query : { ...query, ...c.req.param() };
}

/** Runs an operation for a request, from its query or body to its bytes. */
export async function answer(c: EdgeContext, operation: Operation): Promise<Response> {
	const offered = mediaTypes(operation);
	const type = acceptable<MediaType>(c.req.header("accept"), offered);
	if (type === undefined)
		throw new ProblemError("not-acceptable", `This operation answers in ${offered.join(", ")}`);
	const [input, given] = await inputOf(c, operation);
	const value = wireValue(operation.output, await operation.answer(input, given));
	const text = told(operation, type, value, input);
	return operation.maxAge > 0
		? tagged(c, text, await entityTag(text), CONTENT_TYPES[type], operation.maxAge)
		: c.body(text, 200, { "Content-Type": CONTENT_TYPES[type], "Cache-Control": "no-store" });
}

type MediaType = (typeof MEDIA_TYPES)[number];

const CONTENT_TYPES: Readonly<Record<MediaType, string>> = {
	"application/json": "application/json",
	"image/svg+xml": "image/svg+xml",
	"text/csv": "text/csv; charset=utf-8; header=present",
};

function told({ forms }: Operation, type: MediaType, value: unknown, input: unknown): string {
	if (type === "image/svg+xml" && forms) return forms.chart(value, input);
	if (type === "text/csv" && forms) return forms.table(value, input);
	return JSON.stringify(value);
}

const fixedTags = new Map<string, string>(); // of the few texts that never change while the process runs

/** A text that never changes, its tag worked out once. */
export async function fixedText(
	c: EdgeContext,
	text: string,
	type: string,
	maxAge: number,
): Promise<Response> {
	const tag = fixedTags.get(text) ?? (await entityTag(text));
	fixedTags.set(text, tag);
	return tagged(c, text, tag, type, maxAge);
}

/** A text under its entity tag; 304 to a caller who holds it already. */
function tagged(c: EdgeContext, text: string, tag: string, type: string, maxAge: number): Response {
	const headers = { ETag: tag, "Cache-Control": `public, max-age=${maxAge}` };
	if (matches(c.req.header("if-none-match"), tag)) return c.body(null, 304, headers);
	return c.body(text, 200, { ...headers, "Content-Type": type });
}

export function sayProblem(c: EdgeContext, error: ProblemError): Response {
	const body = problem(error.kind, error.message, c.get("requestId"), error.errors);
	return c.body(JSON.stringify(body), body.status as 400, {
		...error.headers,
		"Content-Type": "application/problem+json",
		"Cache-Control": "no-store",
	});
}
