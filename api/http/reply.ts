import type { Context } from "hono";
import { type ProblemError, problem } from "../problem/problem.ts";
import { type Headers, sharedHeaders } from "./headers.ts";

export type Edge = {
	Variables: {
		requestId: string;
		accessHeaders: Headers; // added by access control
	};
};
export type EdgeContext = Context<Edge>;

/** Every response, including errors and 304, with the shared headers and its own, which may replace them. Node's server writes a
 *  plain object fastest; spreading one costs more than the rest. */
export function reply(
	c: EdgeContext,
	body: string | Uint8Array<ArrayBuffer> | null,
	status: number,
	headers: Headers,
): Response {
	const all = sharedHeaders(c.get("requestId"));
	const access = c.get("accessHeaders");
	for (const name in access) all[name] = access[name]!;
	for (const name in headers) all[name] = headers[name]!;
	return new Response(body, { status, headers: all });
}

const NO_STORE = "no-store";

/** The Cache-Control of a response.
 *  @param maxAge  seconds without revalidation; 0 for no caching
 *  @param scope   any cache, or the client's own only */
export const cacheControl = (maxAge: number, scope: "public" | "private"): string =>
	maxAge > 0 ? `${scope}, max-age=${maxAge}` : NO_STORE;

/** Whether the client accepts gzip. */
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
