import type { Context } from "hono";
import { type ProblemError, problem } from "../problem/problem.ts";
import { type Headers, sharedHeaders } from "./headers.ts";

export type Edge = {
	Variables: {
		requestId: string;
		admitted: Headers; // what letting the request in adds to its answer
	};
};
export type EdgeContext = Context<Edge>;

/** The one way out for every answer, errors and 304 included: with the headers that all share, and its own, which may
 *  replace one. A plain object, built once, is what Node's server writes fastest; spreading one costs more than the rest. */
export function reply(
	c: EdgeContext,
	body: string | Uint8Array<ArrayBuffer> | null,
	status: number,
	headers: Headers,
): Response {
	const all = sharedHeaders(c.get("requestId"));
	const admitted = c.get("admitted");
	for (const name in admitted) all[name] = admitted[name]!;
	for (const name in headers) all[name] = headers[name]!;
	return new Response(body, { status, headers: all });
}

const NO_STORE = "no-store";

/** How long an answer may be kept unasked: in seconds, 0 for never.
 *  @param whose  what may keep it: any cache on the way, or a caller's own alone */
export const cacheControl = (maxAge: number, whose: "public" | "private"): string =>
	maxAge > 0 ? `${whose}, max-age=${maxAge}` : NO_STORE;

/** Whether the caller takes gzip. */
export const acceptsGzip = (c: EdgeContext): boolean =>
	/\bgzip\b(?!\s*;\s*q=0(?:\.0*)?(?:,|$))/.test(c.req.header("accept-encoding") ?? "");

export function sendProblem(c: EdgeContext, error: ProblemError): Response {
	const body = problem(error.kind, error.message, c.get("requestId"), error.errors);
	return reply(c, JSON.stringify(body), body.status, {
		...error.headers,
		"Content-Type": "application/problem+json",
		"Cache-Control": NO_STORE,
	});
}
