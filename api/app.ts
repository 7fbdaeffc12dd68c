import { Hono } from "hono";
import { HTTPException } from "hono/http-exception";
import { DomainError } from "../src/index.ts";
import { assetHandler } from "./asset.ts";
import type { Config } from "./config.ts";
import { PREFLIGHT_HEADERS, requestIdFrom, STATIC_HEADERS } from "./headers.ts";
import { routerPath } from "./path.ts";
import { fromDomainError, fromStatus, ProblemError } from "./problem.ts";
import { answer, type Edge, type EdgeContext, sayProblem } from "./respond.ts";
import { documents, operations } from "./routes/index.ts";

/** The service as a function from Request to Response, on web standards alone: the same on Node and on an edge runtime. */
export function createApp(config: Config): Hono<Edge> {
	const app = new Hono<Edge>();
	app.use(async (c, next) => {
		const requestId = requestIdFrom(c.req.header("x-request-id"));
		c.set("requestId", requestId);
		c.header("X-Request-Id", requestId);
		for (const [name, value] of STATIC_HEADERS) c.header(name, value);
		await next();
	});
	const allowed = new Map<string, string>();
	for (const operation of operations) {
		const path = routerPath(operation.path);
		app.on(operation.method, [path], (c) => answer(c, operation));
		allowed.set(path, operation.method === "get" ? "GET, HEAD, OPTIONS" : "POST, OPTIONS");
	}
	for (const { path, say } of documents) {
		app.get(path, (c) => say(c, config));
		allowed.set(path, "GET, HEAD, OPTIONS");
	}
	for (const asset of config.assets ?? []) {
		app.get(asset.path, assetHandler(asset));
		allowed.set(asset.path, "GET, HEAD, OPTIONS");
	}
	for (const [path, methods] of allowed) {
		app.options(path, (c) => preflight(c, methods));
		app.all(path, (c) => refuseMethod(c, methods));
	}
	app.options("*", (c) => preflight(c, "GET, HEAD, POST, OPTIONS"));
	app.notFound((c) =>
		sayProblem(
			c,
			new ProblemError("not-found", `There is nothing at ${c.req.path}; GET / lists what there is`),
		),
	);
	app.onError((error, c) => sayProblem(c, problemOf(error, c, config)));
	return app;
}

function preflight(c: EdgeContext, allow: string): Response {
	for (const [name, value] of PREFLIGHT_HEADERS) c.header(name, value);
	return c.body(null, 204, { Allow: allow, "Access-Control-Allow-Methods": allow });
}

function refuseMethod(c: EdgeContext, methods: string): Response {
	const detail = `${c.req.path} takes ${methods}, not ${c.req.method}`;
	return sayProblem(c, new ProblemError("method-not-allowed", detail, [], { Allow: methods }));
}

/** What went wrong, in terms the caller may see. Anything unforeseen is told to the operator alone. */
function problemOf(error: unknown, c: EdgeContext, config: Config): ProblemError {
	if (error instanceof ProblemError) return error;
	if (error instanceof DomainError) return fromDomainError(error, c.req.method === "POST" ? "body" : "query");
	if (error instanceof HTTPException)
		return fromStatus(error.status, error.message, error.getResponse().headers);
	config.onFailure(error, c.get("requestId"));
	return new ProblemError("internal", "The service failed on this request; the fault is ours, not yours");
}
