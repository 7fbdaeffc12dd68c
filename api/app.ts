import { Hono } from "hono";
import { HTTPException } from "hono/http-exception";
import { type ConcurrencyLimit, concurrencyLimit } from "./access/concurrency-limit.ts";
import { twoGenerations } from "./compute/two-generation-cache.ts";
import { USUAL_SETTINGS } from "./config/settings.ts";
import type { AppOptions } from "./http/app-options.ts";
import { PREFLIGHT_HEADERS, requestIdFrom } from "./http/headers.ts";
import { incomingBodies } from "./http/incoming-bodies.ts";
import { type Edge, type EdgeContext, reply, sendProblem } from "./http/reply.ts";
import { responder, type SharedState } from "./http/respond.ts";
import type { Tagged } from "./http/send.ts";
import { assetHandler } from "./http/static-file.ts";
import { type Backlog, backlogOf } from "./operations/backlog.ts";
import { operations } from "./operations/index.ts";
import { after, type Maybe } from "./operations/maybe.ts";
import { routerPath } from "./operations/path.ts";
import { documents } from "./pages/documents.ts";
import { fromStatus, overloaded, ProblemError, problemFrom } from "./problem/problem.ts";

const MEMORY = 2 ** 22; // [bytes] of cached GET answers
const INCOMING = 2 ** 26; // [bytes] of incomplete bodies, or four of the largest

type Handler = (c: EdgeContext) => Maybe<Response>;

/** The service as a function from Request to Response, on web standards only: the same on Node and on an edge runtime. */
export function createApp(config: AppOptions): Hono<Edge> {
	const app = new Hono<Edge>();
	const withRequestId = requestHandler(config);
	const { settings = USUAL_SETTINGS } = config;
	const backlog = config.backlog ?? backlogOf(settings.unreadMemory * 2 ** 20);
	const withBacklog = refuseWhenFull(backlog);
	const concurrency = concurrencyLimit(settings.requestsInFlight);
	const withAccess = guard(config, concurrency);
	const shared: SharedState = {
		memory: twoGenerations<Tagged>({
			room: MEMORY,
			weightOf: (name, { text }) => 2 * (name.length + text.length),
		}),
		incoming: incomingBodies(Math.max(INCOMING, 4 * settings.bodyBytes)),
		backlog,
	};
	const methodsOf = new Map<string, string>();
	for (const operation of operations) {
		const path = routerPath(operation.path);
		const handler = path.startsWith("/v1/")
			? withRequestId(
					operation.operationId,
					withAccess(withBacklog(responder(operation, config, shared, concurrency.hold))),
				)
			: withRequestId(operation.operationId, responder(operation, config, shared, unlimited), 400); // probes are always admitted, and recorded only when they fail
		app.on(operation.method, [path], handler);
		methodsOf.set(path, operation.method === "get" ? "GET, HEAD, OPTIONS" : "POST, OPTIONS");
	}
	const texts: readonly (readonly [path: string, handler: Handler, label: string])[] = [
		...documents.map(
			({ path, respond: say }) => [path, (c: EdgeContext) => say(c, config), "document"] as const,
		),
		...(config.assets ?? []).map((asset) => [asset.path, assetHandler(asset), "asset"] as const),
	];
	for (const [path, handler, label] of texts) {
		app.get(path, withRequestId(label, withBacklog(handler)));
		methodsOf.set(path, "GET, HEAD, OPTIONS");
	}
	const others = new Hono<Edge>(); // fallback routes, in an app of their own: a second match for a path would make the first asynchronous
	for (const [path, methods] of methodsOf) {
		others.options(
			path,
			withRequestId("none", (c) => preflight(c, methods)),
		);
		others.all(
			path,
			withRequestId("none", (c) => refuseMethod(c, methods)),
		);
	}
	others.options(
		"*",
		withRequestId("none", (c) => preflight(c, "GET, HEAD, POST, OPTIONS")),
	);
	others.notFound(withRequestId("none", refuseAddress));
	app.notFound((c) => others.fetch(c.req.raw, c.env));
	app.onError((error, c) => withRequestId("none", () => Promise.reject(error))(c)); // errors of the router itself
	return app;
}

/** Wraps a handler with what every request needs: a request id, a problem for thrown errors, and a record for the operator.
 *  @param label  name of the operation in records
 *  @param from   lowest status to record */
function requestHandler(config: AppOptions) {
	const { observe, onFailure } = config;
	const problemOf = (error: unknown, c: EdgeContext): ProblemError => {
		const problem = problemFrom(error, c.req.method === "POST" ? "body" : "query");
		if (problem) return problem;
		if (error instanceof HTTPException)
			return fromStatus(error.status, error.message, error.getResponse().headers);
		onFailure(error, c.get("requestId"));
		return new ProblemError("internal", "The service failed on this request because of a server error");
	};
	return (label: string, handler: Handler, from = 0): Handler =>
		(c) => {
			const start = performance.now();
			const requestId = requestIdFrom(c.req.header("x-request-id"));
			c.set("requestId", requestId);
			const problemFor = (error: unknown) => sendProblem(c, problemOf(error, c));
			const recorded = (response: Response) => {
				const { status } = response;
				if (!observe || status < from) return response;
				const seconds = (performance.now() - start) / 1000;
				observe({ requestId, operation: label, method: c.req.method, status, seconds, at: Date.now() });
				return response;
			};
			try {
				const response = handler(c);
				return response instanceof Promise
					? response.then(recorded, (error) => recorded(problemFor(error)))
					: recorded(response);
			} catch (error) {
				return recorded(problemFor(error));
			}
		};
}

/** Wraps a handler with the concurrency limit, API keys and the rate limit. */
function guard({ admit }: AppOptions, concurrency: ConcurrencyLimit): (handler: Handler) => Handler {
	return (handler) => (c) => {
		concurrency.check();
		if (!admit) return handler(c);
		return after(admit(c), (headers) => {
			c.set("accessHeaders", headers);
			return handler(c);
		});
	};
}

/** Wraps a handler so that it refuses requests while too many answers are unread. */
function refuseWhenFull(backlog: Backlog): (handler: Handler) => Handler {
	return (handler) => (c) => {
		if (backlog.isFull()) throw overloaded("Too many answers are waiting to be read by their clients");
		return handler(c);
	};
}

/** Runs work outside the concurrency limit. */
const unlimited: ConcurrencyLimit["hold"] = (work) => work();

function preflight(c: EdgeContext, allow: string): Response {
	const methods = { Allow: allow, "Access-Control-Allow-Methods": allow };
	return reply(c, null, 204, { ...PREFLIGHT_HEADERS, ...methods });
}

function refuseMethod(c: EdgeContext, methods: string): Response {
	const detail = `${c.req.path} supports ${methods}, not ${c.req.method}`;
	throw new ProblemError("method-not-allowed", detail, [], { Allow: methods });
}

function refuseAddress(c: EdgeContext): Response {
	throw new ProblemError("not-found", `There is nothing at ${c.req.path}; GET / lists all addresses`);
}
