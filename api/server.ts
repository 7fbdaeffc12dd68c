import { readFileSync } from "node:fs";
import type { Server } from "node:http";
import type { AddressInfo } from "node:net";
import { availableParallelism } from "node:os";
import { promisify } from "node:util";
import { gzip } from "node:zlib";
import type { HttpBindings } from "@hono/node-server";
import { accessControl } from "./access/access-control.ts";
import { clientAddress } from "./access/client-address.ts";
import { type Key, keysFrom } from "./access/keys.ts";
import { createApp } from "./app.ts";
import { answerCache } from "./compute/answer-cache.ts";
import { pool } from "./compute/pool/pool.ts";
import { type Deployment, deploymentFrom } from "./config/deployment.ts";
import { createNodeServer } from "./http/node-server.ts";
import type { EdgeContext } from "./http/reply.ts";
import { watchUnread } from "./http/unread-answers.ts";
import { batcher } from "./observe/batcher.ts";
import { logOf } from "./observe/log.ts";
import { type Metrics, metricsOf } from "./observe/metrics.ts";
import type { RequestRecord } from "./observe/request-record.ts";
import { backlogOf } from "./operations/backlog.ts";
import { readPages } from "./pages/read.ts";

const SETTLING = 300; // [ms] delay of the threads' start, so that it does not slow the first answers

/** Ends the process at once, with a message for the operator. */
function exitWith(reason: string): never {
	console.error(`Raykettle cannot start: ${reason}`);
	process.exit(1);
}

/** The deployment described by the environment, with the keys of its keys file. */
function deployment(): Deployment & { readonly keys: readonly Key[] } {
	try {
		const chosen = deploymentFrom(process.env);
		const { keysFile } = chosen;
		return { ...chosen, keys: keysFile === undefined ? [] : keysFrom(readFileSync(keysFile, "utf8")) };
	} catch (error) {
		return exitWith((error as Error).message);
	}
}

const {
	host,
	port,
	metricsPort,
	threads = availableParallelism(),
	logLevel,
	settings,
	...access
} = deployment();
const log = logOf(logLevel);
const thread = new URL(
	import.meta.url.endsWith(".ts") ? "./compute/pool/thread.ts" : "./thread.js",
	import.meta.url,
);
const threadPool = threads > 0 ? pool({ threads, thread, settings, onLoss: log.failure }) : undefined;
let metrics: Metrics | undefined; // created once requests are served
const records = batcher<RequestRecord>((batch) => {
	log.requests(batch);
	metrics?.requests(batch);
});
const pack = promisify(gzip);
const backlog = backlogOf(settings.unreadMemory * 2 ** 20);

const app = createApp({
	...readPages(new URL("../dist/pages/", import.meta.url)), // the same path from api/ and from dist/
	settings,
	backlog,
	...(threadPool && { compute: answerCache(threadPool.compute, settings.answerMemory * 2 ** 20) }),
	admit: accessControl({ ...access, settings, addressOf }),
	pack: async (text) => new Uint8Array(await pack(text)),
	observe: records.add,
	onFailure: log.failure,
});
const server = createNodeServer(app);
watchUnread(server, backlog, settings.unreadTime * 1000);

/** The client's address, from the connection of Node's adapter. */
function addressOf(c: EdgeContext): string {
	const { incoming } = c.env as HttpBindings;
	const forwarded = c.req.header("x-forwarded-for");
	return clientAddress(incoming.socket.remoteAddress ?? "", forwarded, settings.trustedProxies);
}

/** Listens, and reports the address. */
function listen(on: Server, at: number, then: (where: string) => void): void {
	on.on("error", (error: NodeJS.ErrnoException) =>
		exitWith(error.code === "EADDRINUSE" ? `${host}:${at} is in use; choose another port` : error.message),
	);
	on.listen(at, host, () => {
		const { address, port: bound, family } = on.address() as AddressInfo;
		then(`http://${family === "IPv6" ? `[${address}]` : address}:${bound}`);
	});
}

listen(server, port, (where) => {
	console.log(`Raykettle listens on ${where}`);
	if (threadPool) setTimeout(threadPool.start, SETTLING);
});
if (metricsPort !== undefined)
	server.once("listening", async () => {
		metrics = await metricsOf(threadPool, records.flush);
		listen(metrics.server, metricsPort, (where) => console.log(`Metrics on ${where}/metrics`));
	});

/** Stops accepting requests, answers those in flight, and exits: with 0 when all were answered, else with 1 when GRACE_S is over. */
function end(signal: string): void {
	console.log(`${signal}: finishing requests in flight`);
	server.close(async () => {
		await threadPool?.close();
		records.flush();
		log.flush();
		process.exit(0);
	});
	server.closeIdleConnections();
	server.prependListener("request", (_request, response) => {
		response.shouldKeepAlive = false; // else a proxy would keep using the connection
	});
	server.keepAliveTimeout = 1; // [ms] the same for connections that become idle from now on
	setTimeout(() => process.exit(1), settings.grace * 1000).unref();
}

for (const signal of ["SIGTERM", "SIGINT"] as const) process.once(signal, () => end(signal));
