import { once } from "node:events";
import { get } from "node:http";
import { type AddressInfo, connect, type Socket } from "node:net";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { accessControl } from "../api/access/access-control.ts";
import { hexOf } from "../api/access/keys.ts";
import { createApp } from "../api/app.ts";
import { USUAL_SETTINGS } from "../api/config/settings.ts";
import { createNodeServer } from "../api/http/node-server.ts";

// Who sends half of a request and then nothing costs no one else an answer, and loses his connection: every half,
// each waited for until its time is up.

const ARRIVAL = 1500; // [ms] instead of half a minute
const NOTICED = 1500; // [ms] after which a late request is surely seen to be late
const PLACES = 3;
const CALLERS = 12;

const settings = { ...USUAL_SETTINGS, requestsInFlight: PLACES, rateRequests: 0 };
const failures: unknown[] = [];
const server = createNodeServer(
	createApp({ indexPage: undefined, settings, onFailure: (error) => failures.push(error) }),
);
server.headersTimeout = ARRIVAL;
server.requestTimeout = ARRIVAL;

const head = (...headers: readonly string[]) =>
	`POST /v1/tank/cooling HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\n${headers.join("\r\n")}`;
const HALVES = {
	"a stated length and no byte of it": head("Content-Length: 1000", "", ""),
	"a stated length and a part of it": head("Content-Length: 1000", "", '{"tank":'),
	"a long body and a part of it": head("Content-Length: 200000", "", `{"a":"${"x".repeat(20_000)}`),
	"chunks without an end": head("Transfer-Encoding: chunked", "", "8", '{"tank":', ""),
	"half a head": head("X-Half: "),
	"nothing at all": "",
};

interface Caller {
	readonly socket: Socket;
	readonly answer: () => string;
}

let callers: readonly Caller[] = [];
const portOf = (on: typeof server) => (on.address() as AddressInfo).port;

/** Sends a text and keeps its own end of the line open, whatever the other side does. */
async function callerWith(text: string, on = server): Promise<Caller> {
	const socket = connect({ port: portOf(on), host: "127.0.0.1", allowHalfOpen: true });
	let answer = "";
	socket.setEncoding("utf8").on("data", (piece: string) => {
		answer += piece;
	});
	socket.on("error", () => undefined); // a reset is an end as well
	await once(socket, "connect");
	socket.write(text);
	return { socket, answer: () => answer };
}

/** A request of somebody else, on a line of its own that he closes: its status. */
async function status(path: string): Promise<number> {
	const [response] = await once(get({ port: portOf(server), path, agent: false }), "response");
	response.resume();
	return response.statusCode;
}

/** A whole POST: its status. */
async function posted(): Promise<number> {
	const body = JSON.stringify({ items: [{ operation: "getBoilingPoint", body: { elevationM: 1 } }] });
	const headers = { "Content-Type": "application/json", Connection: "close" };
	return (await fetch(`http://127.0.0.1:${portOf(server)}/v1/batch`, { method: "POST", headers, body }))
		.status;
}

const openLines = () =>
	new Promise<number>((resolve, reject) =>
		server.getConnections((error, count) => (error ? reject(error) : resolve(count))),
	);
const wait = (time: number) => new Promise((resolve) => setTimeout(resolve, time));

async function until(holds: () => boolean | Promise<boolean>, time: number): Promise<void> {
	const end = performance.now() + time;
	while (!(await holds()) && performance.now() < end) await wait(50);
}

beforeAll(() => new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening)));
afterEach(() => {
	for (const { socket } of callers) socket.destroy();
	callers = [];
});
afterAll(() => {
	server.close();
	server.closeAllConnections();
});

describe.each(Object.entries(HALVES))("callers who send %s", (_what, text) => {
	it("keep nobody out, hear 408, and lose their lines though they hold on to them", async () => {
		callers = await Promise.all(Array.from({ length: CALLERS }, () => callerWith(text)));
		await wait(200);
		expect(await status("/v1/boiling-point?elevationM=1")).toBe(200);
		expect(await posted()).toBe(200);
		expect(callers.map(({ answer }) => answer())).toEqual(Array(CALLERS).fill(""));
		await until(() => callers.every(({ answer }) => answer().endsWith("}")), ARRIVAL + NOTICED);
		for (const { answer } of callers) expect(answer()).toMatch(/^HTTP\/1\.1 408 /);
		await until(async () => (await openLines()) === 0, 2000);
		expect(await openLines()).toBe(0);
		expect(failures).toEqual([]);
	});
});

it("a key is asked for before any of a body is waited for", async () => {
	const keys = [{ id: "a", kind: "secret" as const, sha256: hexOf(new Uint8Array(32)), origins: [] }];
	const admit = accessControl({ settings, keys, keysRequired: true, addressOf: () => "127.0.0.1" });
	const closed = createNodeServer(
		createApp({ indexPage: undefined, settings, admit, onFailure: (error) => failures.push(error) }),
	);
	await new Promise<void>((listening) => closed.listen(0, "127.0.0.1", listening));
	callers = [await callerWith(HALVES["a stated length and no byte of it"], closed)];
	await until(() => callers[0]!.answer() !== "", 1000);
	expect(callers[0]!.answer()).toMatch(/^HTTP\/1\.1 401 /);
	closed.close();
	closed.closeAllConnections();
});
