import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { createApp } from "../../api/app.ts";
import { USUAL_SETTINGS } from "../../api/config/settings.ts";
import { operations } from "../../api/operations/index.ts";
import { examples, got, JSON_BODY, posted, type Sent } from "../examples.ts";
import { type OnWorkerd, onWorkerd } from "./workerd.ts";

// Engines differ in the last bit of a power or a logarithm, and runtimes in what they make of a request: callers see neither.
// Every example in every form, and every kind of refusal.

const SETTINGS = {
	...USUAL_SETTINGS,
	rateRequests: 0, // no count of what is left, in which any two instances differ
	bodyBytes: 32_768,
};

let edge: OnWorkerd;
beforeAll(async () => {
	edge = await onWorkerd({ RATE_REQUESTS: "0", BODY_BYTES: "32768" });
});
afterAll(() => edge.end());

const node = createApp({
	indexPage: undefined,
	settings: SETTINGS,
	onFailure: (error) => {
		throw error;
	},
});

const by = (method: string, path: string): Sent => [path, { method }];

/** All that a caller sees of an answer, but for what only the wire between tells. */
async function seen(response: Response) {
	const headers = [...response.headers].filter(
		([name]) => !["connection", "content-length", "date"].includes(name),
	);
	return { status: response.status, headers: Object.fromEntries(headers), body: await response.text() };
}

/** What Node and workerd answer to one request, under the same request id. Each goes to workerd on a connection of its own: it
 *  would close an idle one while this thread works out what Node answers. */
async function both([path, init]: Sent) {
	const headers = { ...(init.headers as object), "X-Request-Id": "same" };
	return {
		here: await seen(await node.request(path, { ...init, headers })),
		there: await seen(await edge.ask(path, { ...init, headers: { ...headers, Connection: "close" } })),
	};
}

describe("every example of the contract", () => {
	it("is here, in every form", () => {
		expect(new Set(examples.map(([, , type]) => type)).size).toBe(3);
		expect(new Set(examples.map(([operationId]) => operationId)).size).toBe(operations.length);
	});

	it.each(examples)("%s %s as %s has the same bytes", async (_operation, _name, type, sent) => {
		const { here, there } = await both(sent);
		expect(there).toEqual(here);
		expect(there.status).toBe(200);
		expect(there.headers["content-type"]).toContain(type);
	});
});

const PRESSURE = "/v1/boiling-point?elevationM=2350";
const kettle = (elevationM: number) => ({ operation: "getBoilingPoint", body: { elevationM } });
const BATCH = JSON.stringify({ items: [kettle(2350), kettle(99_000)] });
const hard = operations.find(({ operationId }) => operationId === "warmUpTank")!;
const contradictory = { ...hard.examples.least!.value, startTime: "15:00", endTime: "09:00" };

const others: readonly (readonly [name: string, status: number, sent: Sent])[] = [
	["the index", 200, got("/")],
	["the contract", 200, got("/openapi.json")],
	["HEAD", 200, by("HEAD", PRESSURE)],
	["a batch with a problem in it", 200, posted("/v1/batch", BATCH)],
	["a preflight", 204, by("OPTIONS", "/v1/batch")],
	["an unknown parameter", 400, got("/v1/boiling-point?elevation=2350")],
	["a body that is not JSON", 400, posted(hard.path, "{nope")],
	["no body", 400, posted(hard.path, "")],
	["JSON that breaks off", 400, posted(hard.path, '{"tank":{"volumeL":1')],
	[
		"a body with unknown names",
		400,
		posted(hard.path, '{"tank":{"volume":1},"__proto__":{"x":1},"ключ":"\\ud83d"}'),
	],
	["deep nesting", 400, posted(hard.path, "[".repeat(12_000) + "]".repeat(12_000))],
	["a broken escape in an address", 404, got("/v1/fluids/%E0%A4%A")],
	["an unknown address", 404, got("/v1/kettle")],
	["an unknown id", 404, got("/v1/fluids/lava")],
	["a wrong method", 405, by("PUT", hard.path)],
	["a form that is not offered", 406, got(PRESSURE, { Accept: "text/html" })],
	["too large a body", 413, posted(hard.path, " ".repeat(40_000))],
	["a body of another type", 415, posted(hard.path, "{}", { "Content-Type": "text/plain" })],
	["a packed body", 415, posted(hard.path, "{}", { ...JSON_BODY, "Content-Encoding": "gzip" })],
	["a contradiction", 422, posted(hard.path, JSON.stringify(contradictory))],
];

describe("whatever else is asked", () => {
	it.each(others)("%s is answered alike, with %i", async (_name, status, sent) => {
		const { here, there } = await both(sent);
		expect(there).toEqual(here);
		expect(there.status).toBe(status);
	});

	it("what the caller holds already is answered alike, with 304", async () => {
		const { headers } = await seen(await edge.ask(PRESSURE));
		const { here, there } = await both(got(PRESSURE, { "If-None-Match": headers.etag! }));
		expect(there).toEqual(here);
		expect(there.status).toBe(304);
	});
});

it("nothing failed there", () => expect(edge.written).toEqual([]));
