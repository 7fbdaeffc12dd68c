import { describe, expect, it } from "vitest";
import { accessControl } from "../../../../api/access/access-control.ts";
import { clientAddress } from "../../../../api/access/client-address.ts";
import { hexOf } from "../../../../api/access/keys.ts";
import { createApp } from "../../../../api/app.ts";

// What a caller sends four times as long may take four times as long, not sixteen: else one request of the size that is let in
// stops everybody's answers for seconds.

const failures: unknown[] = [];
const sha256 = hexOf(new Uint8Array(32));
const app = createApp({
	indexPage: "<!doctype html><title>Raykettle</title>",
	onFailure: (error) => failures.push(error),
	admit: accessControl({
		settings: { rateRequests: 0, rateWindow: 60 },
		keys: [{ id: "shop", kind: "publishable", sha256, origins: ["https://shop.example"] }],
		keysRequired: false,
		addressOf: (c) => clientAddress("::1", c.req.header("x-forwarded-for"), 1),
	}),
});

type Sent = readonly [path: string, init?: RequestInit];
type Hostile = readonly [name: string, status: number, sent: (length: number) => Sent];

const URL_OF_ONE = "/v1/boiling-point?elevationM=1";
const long = (piece: string, length: number) => piece.repeat(Math.ceil(length / piece.length));
const under = (header: string, value: string): Sent => [URL_OF_ONE, { headers: { [header]: value } }];
const posted = (path: string, body: unknown, type = "application/json"): Sent => [
	path,
	{
		method: "POST",
		headers: { "content-type": type },
		body: typeof body === "string" ? body : JSON.stringify(body),
	},
];
const batched = (operation: string, body: object): Sent =>
	posted("/v1/batch", { items: [{ operation, body }] });
const numbered = (length: number, size: number) =>
	Array.from({ length: length / size }, (_, i) => String(i).padStart(size - 1, "k"));

const BODIES: readonly Hostile[] = [
	["a decimal in a batch", 200, (n) => batched("getBoilingPoint", { elevationM: `1${long("1", n)}x` })],
	["a decimal with a point", 200, (n) => batched("getBoilingPoint", { elevationM: `${long("1", n)}.` })],
	["an exponent", 200, (n) => batched("getBoilingPoint", { elevationM: `1e${long("1", n)}x` })],
	["a time", 200, (n) => batched("getSunPosition", { time: `2025-01-15T08:30:00.${long("1", n)}x` })],
	["times", 200, (n) => batched("getSunPosition", { time: Array(n / 4).fill("x") })],
	["an id", 200, (n) => batched("getFluid", { id: long("oil", n) })],
	["the name of an operation", 400, (n) => batched(long("getFluid", n), {})],
	["a date", 400, (n) => posted("/v1/tank/warm-up", { date: long("2025-01-", n) })],
	["a clock", 400, (n) => posted("/v1/tank/warm-up", { startTime: long("08:", n) })],
	["a time zone", 400, (n) => posted("/v1/tank/warm-up", { site: { timeZone: long("Asia/", n) } })],
	["a kind", 400, (n) => posted("/v1/dish/optics", { dish: { kind: long("twoAxis", n) } })],
	["a key", 400, (n) => posted("/v1/tank/warm-up", { [long("tank", n)]: 1 })],
	["a key of signs to be escaped", 400, (n) => posted("/v1/tank/warm-up", { [long("~/", n)]: 1 })],
	["keys", 400, (n) => posted("/v1/tank/warm-up", Object.fromEntries(numbered(n, 20).map((k) => [k, 1])))],
	["lists in lists", 400, (n) => posted("/v1/tank/warm-up", `{"a":${long("[", n)}${long("]", n)}}`)],
	["blanks", 400, (n) => posted("/v1/tank/warm-up", long(" ", n))],
	["rows", 400, (n) => posted("/v1/test-run", { rows: Array(n / 4).fill({}) })],
];

const HEADERS: readonly Hostile[] = [
	["a Content-Type of blanks", 415, (n) => posted("/v1/batch", "{}", `application/json${long(" ", n)}x`)],
	["a Content-Type with a suffix", 415, (n) => posted("/v1/batch", "{}", `application/${long("a.-+", n)}`)],
	["a Content-Type of charsets", 415, (n) => posted("/v1/batch", "{}", long("; charset = ", n))],
	["an Accept of commas", 406, (n) => under("accept", long(",", n))],
	["an Accept of semicolons", 406, (n) => under("accept", long(";", n))],
	["an Accept of blanks", 406, (n) => under("accept", `a${long(" ", n)}a`)],
	["an Accept-Encoding of codings", 200, (n) => under("accept-encoding", long("gzip;q=0,", n))],
	["an Accept-Encoding of blanks", 200, (n) => under("accept-encoding", `gzip${long(" ", n)}; q`)],
	["an Accept-Encoding of noughts", 200, (n) => under("accept-encoding", `gzip;q=0.${long("0", n)}x`)],
	["an If-None-Match", 200, (n) => under("if-none-match", long('W/"a",', n))],
	["an X-Request-Id", 200, (n) => under("x-request-id", long("a:", n))],
	["an X-Forwarded-For of commas", 200, (n) => under("x-forwarded-for", long("1,", n))],
	["an X-Forwarded-For of colons", 200, (n) => under("x-forwarded-for", long(":1", n))],
	["an X-Api-Key", 401, (n) => under("x-api-key", long("rk_secret_", n))],
	["an Origin", 401, (n) => [URL_OF_ONE, { headers: { origin: long("a:", n), "x-api-key": "rk" } }]],
];

const ADDRESSES: readonly Hostile[] = [
	["a decimal in a query", 400, (n) => [`/v1/boiling-point?elevationM=1${long("1", n)}x`]],
	["an unknown name over and over", 400, (n) => [`/v1/boiling-point?${long("a&", n)}`]],
	["a known name over and over", 400, (n) => [`/v1/boiling-point?${long("elevationM=1&", n)}`]],
	["a name that takes many, over and over", 400, (n) => [`/v1/sun/position?${long("time=1&", n)}`]],
	["unknown names", 400, (n) => [`/v1/boiling-point?${numbered(n, 5).join("&")}`]],
	["a name", 400, (n) => [`/v1/boiling-point?${long("elevation", n)}`]],
	["a time of blanks", 400, (n) => [`/v1/sun/position?time=${long("+", n)}`]],
	["bytes that are no text", 400, (n) => [`/v1/boiling-point?${long("%ff", n)}`]],
	["an id in the path", 404, (n) => [`/v1/fluids/${long("oil.", n)}`]],
	["an unknown path", 404, (n) => [`/v1/${long("a/", n)}`]],
	["a path of bytes that are no text", 404, (n) => [`/v1/fluids/${long("%ff", n)}`]],
];

const RUNS = 5;
const ATTEMPTS = 4; // a busy machine makes one look slow; what grows by the square looks slow in all
const GROWTH = 8; // times as long at four times the length: 4 is linear, 16 quadratic
const FLOOR = 0.5; // [ms] below which a time tells of the machine

async function time([path, init]: Sent, status: number): Promise<number> {
	const request = new Request(new URL(path, "http://service.test"), init);
	const begun = performance.now();
	const response = await app.fetch(request);
	const taken = performance.now() - begun;
	await response.text();
	expect(response.status).toBe(status);
	return taken;
}

/** The least time of some runs at a length and at four times it, in turns, so that both meet the same machine. */
async function growth([, status, sent]: Hostile, length: number): Promise<number> {
	let [short, long] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
	for (let run = 0; run < RUNS; run++) {
		short = Math.min(short, await time(sent(length), status));
		long = Math.min(long, await time(sent(4 * length), status));
	}
	return long / Math.max(short, FLOOR);
}

describe.each([
	["body", 10_000, BODIES],
	["header", 10_000, HEADERS],
	["address", 10_000, ADDRESSES],
] as const)("a long %s", (_place, length, hostile) => {
	it.each(hostile)("%s takes no longer than its length asks", async (...one) => {
		let least = Number.POSITIVE_INFINITY;
		for (let attempt = 0; attempt < ATTEMPTS && least >= GROWTH; attempt++)
			least = Math.min(least, await growth(one, length));
		expect(least).toBeLessThan(GROWTH);
		expect(failures).toEqual([]);
	});
});

it("a refused header is not repeated to its sender", async () => {
	const mark = "not-to-be-repeated";
	const refused = [
		posted("/v1/batch", "{}", `text/${mark}`),
		["/v1/batch", { method: "POST", body: "{}", headers: { "content-encoding": mark } }] as const,
		under("accept", `text/${mark}`),
		under("x-api-key", mark),
	];
	for (const [path, init] of refused) {
		const response = await app.request(path, init);
		expect(response.status).toBeGreaterThanOrEqual(400);
		expect(await response.text()).not.toContain(mark);
	}
});
