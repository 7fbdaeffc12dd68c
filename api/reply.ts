import type { Context } from "hono";
import { type Headers, STATIC_HEADERS } from "./headers.ts";
import { type ProblemError, problem } from "./problem.ts";

export type Edge = {
	Variables: {
		requestId: string;
		admitted: Headers; // what letting the request in adds to its answer
	};
};
export type EdgeContext = Context<Edge>;

/** The one way out for every answer: with the headers that all share, and those of this request.
 *  A plain object of headers, given once, is what Node's server writes fastest. */
export function reply(
	c: EdgeContext,
	body: string | Uint8Array<ArrayBuffer> | null,
	status: number,
	headers: Headers,
): Response {
	return new Response(body, {
		status,
		headers: { ...STATIC_HEADERS, "X-Request-Id": c.get("requestId"), ...c.get("admitted"), ...headers },
	});
}

/** How long a caller may keep an answer unasked; 0 for never. */
export const keeping = (maxAge: number): Headers => ({
	"Cache-Control": maxAge > 0 ? `public, max-age=${maxAge}` : "no-store",
});

/** Whether the caller takes gzip. */
export const takesGzip = (c: EdgeContext): boolean =>
	/\bgzip\b(?!\s*;\s*q=0(?:\.0*)?(?:,|$))/.test(c.req.header("accept-encoding") ?? "");

export function sayProblem(c: EdgeContext, error: ProblemError): Response {
	const body = problem(error.kind, error.message, c.get("requestId"), error.errors);
	return reply(c, JSON.stringify(body), body.status, {
		...error.headers,
		"Content-Type": "application/problem+json",
		"Cache-Control": "no-store",
	});
}
