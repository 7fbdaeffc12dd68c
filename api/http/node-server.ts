import type { Server } from "node:http";
import type { Duplex } from "node:stream";
import { createAdaptorServer, type HttpBindings } from "@hono/node-server";
import { LIMITS } from "../config/limits.ts";
import { type ProblemKind, problem } from "../problem/problem.ts";
import { requestIdFrom, sharedHeaders } from "./headers.ts";

const KEEP_ALIVE = 65_000; // [ms] longer than the minute for which load balancers commonly keep idle connections
const CHECK_INTERVAL = 1000; // [ms] how often incoming requests are checked
const LINGER = 1000; // [ms] in which a refused client can read the response, before the connection is closed

/** The app behind Node's HTTP server, with limits on the size of headers and the time for a request to arrive. */
export function createNodeServer(app: {
	readonly fetch: (request: Request, env: HttpBindings) => Response | Promise<Response>;
}): Server {
	const timeout = LIMITS.arrivalTime.value * 1000;
	const server = createAdaptorServer({
		fetch: (request, env) => app.fetch(request, env as HttpBindings),
		serverOptions: {
			maxHeaderSize: LIMITS.headerBytes.value,
			headersTimeout: timeout,
			requestTimeout: timeout,
			keepAliveTimeout: KEEP_ALIVE,
			connectionsCheckingInterval: CHECK_INTERVAL,
		},
	}) as Server;
	server.on("clientError", refuseConnection);
	return server;
}

const KINDS: Readonly<Record<string, ProblemKind>> = {
	ERR_HTTP_REQUEST_TIMEOUT: "request-timeout",
	HPE_HEADER_OVERFLOW: "headers-too-large",
};

/** Answers what never became a request (too slow, too large, not HTTP) with a problem document. */
function refuseConnection(error: NodeJS.ErrnoException, socket: Duplex): void {
	if (error.code === "ECONNRESET" || !socket.writable) return void socket.destroy();
	const requestId = requestIdFrom(undefined);
	const kind = KINDS[error.code ?? ""] ?? "malformed-request";
	const body = problem(kind, DETAILS[kind] ?? "The request is not valid HTTP (RFC 9112)", requestId, []);
	const text = JSON.stringify(body);
	const headers = {
		...sharedHeaders(requestId),
		"Content-Type": "application/problem+json",
		"Content-Length": String(Buffer.byteLength(text)),
		"Cache-Control": "no-store",
		Connection: "close",
	};
	const head = Object.entries(headers)
		.map(([name, value]) => `${name}: ${value}\r\n`)
		.join("");
	socket.end(`HTTP/1.1 ${body.status} ${body.title}\r\n${head}\r\n${text}`);
	setTimeout(() => socket.destroy(), LINGER).unref();
}

const DETAILS: Readonly<Partial<Record<ProblemKind, string>>> = {
	"request-timeout": `The request did not arrive completely within ${LIMITS.arrivalTime.value} s`,
	"headers-too-large": `Request line and headers exceed the limit of ${LIMITS.headerBytes.value} bytes`,
};
