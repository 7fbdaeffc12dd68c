import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { createRaykettle, type RaykettleOptions } from "../../sdk/index.ts";

// A call is held until its time is up or its caller leaves, however hard the collector of garbage works: waits of each kind.

const TIME = 300; // [ms] that a call has
const MUCH = 3000; // [ms] after which it counts as held forever

setFlagsFromString("--expose-gc");
const gc = runInNewContext("gc") as () => void;

/** A server that is as good as dead: it takes a request and sends nothing, or headers and half a body. */
const server = createServer((request, response) => {
	abandoned = new Promise((resolve) => response.on("close", () => resolve("closed")));
	if (request.url !== "/v1/fluids") return;
	response.writeHead(200, { "Content-Type": "application/json" });
	response.write('{"fluids":[');
});
let abandoned: Promise<string>;
let baseUrl: string;
beforeAll(async () => {
	await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
	baseUrl = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
});
afterAll(() => {
	server.close();
	server.closeAllConnections();
});

let collecting: NodeJS.Timeout;
beforeEach(() => {
	collecting = setInterval(gc, 10);
});
afterEach(() => clearInterval(collecting));

const within = <T>(promise: Promise<T>) =>
	Promise.race([promise, new Promise<"held">((resolve) => setTimeout(resolve, MUCH, "held"))]);

interface CallCase {
	readonly timeoutMs?: number;
	readonly signal?: true;
}

/** The signal of a caller that gives up soon; nothing but the call holds on to it. */
function soon(): AbortSignal {
	const controller = new AbortController();
	setTimeout(() => controller.abort(new Error("enough")), TIME);
	return controller.signal;
}

/** Ways to fetch, and whether they end the request itself when its signal fires. */
const FETCHES: readonly (readonly [string, Pick<RaykettleOptions, "fetch">, boolean])[] = [
	["the global fetch", {}, true],
	["a fetch of the user's own", { fetch: (url, init) => fetch(url, init) }, true],
	["a fetch that makes a Request of it", { fetch: (url, init) => fetch(new Request(url, init)) }, false],
	["a fetch that ignores the signal", { fetch: (url, { signal, ...init }) => fetch(url, init) }, false],
];

describe.each(FETCHES)("with %s and a collector of garbage at work", (_, options, ends) => {
	describe.each([
		["a server that sends no headers", "meta"],
		["a server that sends half a body", "fluids"],
	] as const)("%s", (_, operation) => {
		it.each([
			["the time is up", { timeoutMs: TIME }, { name: "TimeoutError" }],
			["the caller ends it", { timeoutMs: 0, signal: true }, { message: "enough" }],
			["the caller ends it before its time is up", { signal: true }, { message: "enough" }],
		] as const)("holds a call until %s", async (_, { signal, ...call }: CallCase, reason) => {
			const raykettle = createRaykettle({ baseUrl, ...options });
			const before = performance.now();
			const outcome = await within(
				raykettle[operation]({ ...call, ...(signal && { signal: soon() }) }).then(
					() => "answered",
					(error: unknown) => error,
				),
			);
			expect(outcome).toMatchObject(reason);
			expect(performance.now() - before).toBeGreaterThan(TIME - 20);
			if (ends) expect(await within(abandoned)).toBe("closed"); // or the connection would be kept
		});
	});
});
