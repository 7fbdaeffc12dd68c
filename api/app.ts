import { Hono } from "hono";
import { HTTPException } from "hono/http-exception";
import { type ConcurrencyLimit, concurrencyLimit } from "./access/concurrency-limit.ts";
import { twoGenerations } from "./compute/two-generation-cache.ts";
import { USUAL_SETTINGS } from "./config/settings.ts";
import type { AppOptions } from "./http/app-options.ts";
import { arrivingBodies } from "./http/arriving-bodies.ts";
import { PREFLIGHT_HEADERS, requestIdFrom } from "./http/headers.ts";
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

const MEMORY = 2 ** 22; // [bytes] of GET answers that may be kept
const ARRIVING = 2 ** 26; // [bytes] of bodies that have not come whole yet, or four of the largest

type Handler = (c: EdgeContext) => Maybe<Response>;

/** The service as a function from Request to Response, on web standards alone: the same on Node and on an edge runtime. */
export function createApp(config: AppOptions): Hono<Edge> {
	const app = new Hono<Edge>();
	const handled = requestHandler(config);
	const { settings = USUAL_SETTINGS } = config;
	const backlog = config.backlog ?? backlogOf(settings.unreadMemory * 2 ** 20);
	const taken = refuseWhenFull(backlog);
	const room = concurrencyLimit(settings.requestsInFlight);
	const guarded = guard(config, room);
	const shared: SharedState = {
		memory: twoGenerations<Tagged>({
			room: MEMORY,
			weightOf: (name, { text }) => 2 * (name.length + text.length),
		}),
		arriving: arrivingBodies(Math.max(ARRIVING, 4 * settings.bodyBytes)),
		backlog,
	};
	const allowed = new Map<string, string>();
	for (const operation of operations) {
		const path = routerPath(operation.path);
		const handler = path.startsWith("/v1/")
			? handled(operation.operationId, guarded(taken(responder(operation, config, shared, room.hold))))
			: handled(operation.operationId, responder(operation, config, shared, atOnce), 400); // a probe is always let in, and told of only when it fails
		app.on(operation.method, [path], handler);
		allowed.set(path, operation.method === "get" ? "GET, HEAD, OPTIONS" : "POST, OPTIONS");
	}
	const texts: readonly (readonly [path: string, handler: Handler, label: string])[] = [
		...documents.map(({ path, say }) => [path, (c: EdgeContext) => say(c, config), "document"] as const),
		...(config.assets ?? []).map((asset) => [asset.path, assetHandler(asset), "asset"] as const),
	];
	for (const [path, handler, label] of texts) {
		app.get(path, handled(label, taken(handler)));
		allowed.set(path, "GET, HEAD, OPTIONS");
	}
	const others = new Hono<Edge>(); // what no route takes: apart, since a second match for a path would have the first wait
	for (const [path, methods] of allowed) {
		others.options(
			path,
			handled("none", (c) => preflight(c, methods)),
		);
		others.all(
			path,
			handled("none", (c) => refuseMethod(c, methods)),
		);
	}
	others.options(
		"*",
		handled("none", (c) => preflight(c, "GET, HEAD, POST, OPTIONS")),
	);
	others.notFound(handled("none", refuseAddress));
	app.notFound((c) => others.fetch(c.req.raw, c.env));
	app.onError((error, c) => handled("none", () => Promise.reject(error))(c)); // of the router itself
	return app;
}

/** Puts round a handler what every request needs: its id, a problem for whatever is thrown, and word to the operator.
 *  @param label  what the operator reads for the operation
 *  @param from   the least status that the operator is told of */
function requestHandler(config: AppOptions) {
	const { observe, onFailure } = config;
	const problemOf = (error: unknown, c: EdgeContext): ProblemError => {
		const problem = problemFrom(error, c.req.method === "POST" ? "body" : "query");
		if (problem) return problem;
		if (error instanceof HTTPException)
			return fromStatus(error.status, error.message, error.getResponse().headers);
		onFailure(error, c.get("requestId"));
		return new ProblemError("internal", "The service failed on this request; the fault is ours, not yours");
	};
	return (label: string, handler: Handler, from = 0): Handler =>
		(c) => {
			const begun = performance.now();
			const requestId = requestIdFrom(c.req.header("x-request-id"));
			c.set("requestId", requestId);
			const failed = (error: unknown) => sendProblem(c, problemOf(error, c));
			const seen = (response: Response) => {
				const { status } = response;
				if (!observe || status < from) return response;
				const seconds = (performance.now() - begun) / 1000;
				observe({ requestId, operation: label, method: c.req.method, status, seconds, at: Date.now() });
				return response;
			};
			try {
				const response = handler(c);
				return response instanceof Promise
					? response.then(seen, (error) => seen(failed(error)))
					: seen(response);
			} catch (error) {
				return seen(failed(error));
			}
		};
}

/** Puts before a handler what keeps strangers and floods out: a bound on what is in flight, keys and the rate limit. */
function guard({ admit }: AppOptions, room: ConcurrencyLimit): (handler: Handler) => Handler {
	return (handler) => (c) => {
		room.check();
		if (!admit) return handler(c);
		return after(admit(c), (headers) => {
			c.set("admitted", headers);
			return handler(c);
		});
	};
}

/** Puts before a handler that nothing is begun while too much is held for callers who do not take it. */
function refuseWhenFull(backlog: Backlog): (handler: Handler) => Handler {
	return (handler) => (c) => {
		if (backlog.isFull()) throw overloaded("Too many answers wait for their callers to take them");
		return handler(c);
	};
}

/** The place of a request that needs none. */
const atOnce: ConcurrencyLimit["hold"] = (work) => work();

function preflight(c: EdgeContext, allow: string): Response {
	const methods = { Allow: allow, "Access-Control-Allow-Methods": allow };
	return reply(c, null, 204, { ...PREFLIGHT_HEADERS, ...methods });
}

function refuseMethod(c: EdgeContext, methods: string): Response {
	const detail = `${c.req.path} takes ${methods}, not ${c.req.method}`;
	throw new ProblemError("method-not-allowed", detail, [], { Allow: methods });
}

function refuseAddress(c: EdgeContext): Response {
	throw new ProblemError("not-found", `There is nothing at ${c.req.path}; GET / lists what there is`);
}
