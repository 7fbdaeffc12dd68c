import { describe, expect, it } from "vitest";
import { type AccessOptions, accessControl } from "../../api/access/access-control.ts";
import { digestOf, hexOf, type Key, newKey } from "../../api/access/keys.ts";
import { createApp } from "../../api/app.ts";
import { failures, problemIn } from "./service.ts";

const secret = newKey("secret");
const page = newKey("publishable");
const shop = "https://www.cedar-row.example";
const keys: readonly Key[] = [
	{ id: "quotes", kind: "secret", sha256: hexOf(await digestOf(secret)), origins: [], requests: 5 },
	{ id: "web", kind: "publishable", sha256: hexOf(await digestOf(page)), origins: [shop] },
];
const bytes = new Uint8Array();
const URL = "/v1/boiling-point?elevationM=2350";

/** The app behind a door: three requests a minute each, addresses as the test names them. */
function behind(door: Partial<AccessOptions>) {
	const app = createApp({
		indexPage: undefined,
		assets: [
			{ path: "/widget.js", type: "text/javascript", maxAge: 60, read: () => ({ bytes, gzipped: bytes }) },
		],
		onFailure: (error) => failures.push(error),
		admit: accessControl({
			settings: { rateRequests: 3, rateWindow: 60 },
			keys: [],
			keysRequired: false,
			addressOf: (c) => c.req.header("x-test-address") ?? "192.0.2.1",
			...door,
		}),
	});
	return (headers: Readonly<Record<string, string>> = {}, url = URL, init: RequestInit = {}) =>
		app.request(url, { headers, ...init });
}

describe("the rate limit", () => {
	it("tells on each answer what is left, 4xx and 304 included, then refuses with the time to come back", async () => {
		const ask = behind({});
		const first = await ask();
		expect(first.headers.get("ratelimit-policy")).toBe('"default";q=3;w=60');
		expect(first.headers.get("ratelimit")).toMatch(/^"default";r=2;t=\d+$/);
		const held = await ask({ "If-None-Match": first.headers.get("etag")! });
		expect([held.status, held.headers.get("ratelimit")?.slice(0, 13)]).toEqual([304, '"default";r=1']);
		const faulty = await ask({}, "/v1/boiling-point?elevationM=lots");
		expect([faulty.status, faulty.headers.get("ratelimit")?.slice(0, 13)]).toEqual([400, '"default";r=0']);
		const refused = await ask();
		expect(Number(refused.headers.get("retry-after"))).toBeGreaterThan(0);
		expect(refused.headers.get("ratelimit")).toMatch(/^"default";r=0;t=\d+$/);
		expect(await problemIn(refused)).toMatchObject({ status: 429 });
		expect((await ask({ "x-test-address": "192.0.2.2" })).status).toBe(200);
	});

	it("lets probes, preflights, the contract and unknown addresses by", async () => {
		const ask = behind({ settings: { rateRequests: 1, rateWindow: 60 } });
		await ask();
		expect((await ask()).status).toBe(429);
		expect((await ask({}, "/health/live")).status).toBe(200);
		expect((await ask({}, "/openapi.json")).status).toBe(200);
		expect((await ask({}, "/v1/tank/warm-up", { method: "OPTIONS" })).status).toBe(204);
		expect((await ask({}, "/nowhere")).status).toBe(404);
	});

	it("sends no field where there is no limit", async () => {
		const ask = behind({ settings: { rateRequests: 0, rateWindow: 60 } });
		for (let i = 0; i < 20; i += 1) expect((await ask()).headers.get("ratelimit")).toBeNull();
	});
});

describe("keys", () => {
	it("401: none where one is required, a wrong one wherever there are keys", async () => {
		const ask = behind({ keys, keysRequired: true });
		const none = await ask();
		expect(none.headers.get("www-authenticate")).toContain("ApiKey");
		expect(await problemIn(none)).toMatchObject({ status: 401 });
		const wrong = await ask({ "X-Api-Key": newKey("secret"), "x-test-address": "192.0.2.9" });
		expect(wrong.status).toBe(401);
	});

	it("a wrong key counts against its address: nobody tries many", async () => {
		const ask = behind({ keys });
		const statuses = [];
		for (let i = 0; i < 5; i += 1) statuses.push((await ask({ "X-Api-Key": newKey("secret") })).status);
		expect(statuses).toEqual([401, 401, 401, 429, 429]);
	});

	it("lets whoever has none in where none is required", async () => {
		expect((await behind({ keys })()).status).toBe(200);
	});

	it("where one is required, caches on the way keep no answer, but what needs none", async () => {
		const kept = async (door: Partial<AccessOptions>, url: string, headers: Record<string, string> = {}) => {
			const response = await behind(door)({ "x-api-key": secret, ...headers }, url);
			return `${response.status} ${response.headers.get("cache-control")}`;
		};
		const closed = { keys, keysRequired: true };
		expect(await kept({ keys }, URL)).toBe("200 public, max-age=86400");
		expect(await kept(closed, URL)).toBe("200 private, max-age=86400");
		expect(await kept(closed, URL, { "if-none-match": "*" })).toBe("304 private, max-age=86400");
		expect(await kept(closed, "/v1/meta")).toBe("200 private, max-age=3600");
		expect(await kept(closed, "/health/live")).toBe("200 no-store");
		expect(await kept(closed, "/openapi.json")).toBe("200 public, max-age=3600");
		expect(await kept(closed, "/")).toBe("200 public, max-age=3600");
		expect(await kept(closed, "/widget.js")).toBe("200 public, max-age=60");
	});

	it("a secret key counts by itself with its own quota, wherever it comes from", async () => {
		const ask = behind({ keys, keysRequired: true });
		const statuses = [];
		for (let i = 0; i < 6; i += 1)
			statuses.push((await ask({ "X-Api-Key": secret, "x-test-address": `192.0.2.${i}` })).status);
		expect(statuses).toEqual([200, 200, 200, 200, 200, 429]);
	});

	it("a publishable key opens a GET from a page on the service's own origin, sent without Origin", async () => {
		const ask = behind({ keys, keysRequired: true });
		const own = { "X-Api-Key": page, "Sec-Fetch-Site": "same-origin" };
		expect((await ask({ ...own, Host: "www.cedar-row.example" })).status).toBe(200);
		expect((await ask({ ...own, Host: "cedar-row.example" })).status).toBe(403);
		expect((await ask({ "X-Api-Key": page, Host: "www.cedar-row.example" })).status).toBe(403);
	});

	it("403: a publishable key on another page, a secret one in any page", async () => {
		const ask = behind({ keys, keysRequired: true });
		expect((await ask({ "X-Api-Key": page, Origin: shop })).status).toBe(200);
		for (const headers of [
			{ "X-Api-Key": page, Origin: "https://cedar-row.example.evil.example" },
			{ "X-Api-Key": secret, Origin: shop },
		]) {
			const response = await ask({ ...headers, "x-test-address": "192.0.2.7" });
			const problem = await problemIn(response);
			expect(problem.status).toBe(403);
			expect(JSON.stringify(problem)).not.toContain(headers["X-Api-Key"].slice(-20));
		}
	});
});

it("reports no failure of its own", () => expect(failures).toEqual([]));
