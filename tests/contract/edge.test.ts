import type { Server } from "node:http";
import { connect } from "node:net";
import request from "supertest";
import { afterAll, describe, expect, it } from "vitest";
import { createApp } from "../../api/app.ts";
import { LIMITS } from "../../api/config/limits.ts";
import { USUAL_SETTINGS } from "../../api/config/settings.ts";
import { createNodeServer } from "../../api/http/node-server.ts";
import { operations } from "../../api/operations/index.ts";
import { app, failures, problemIn } from "./service.ts";

const post = operations.find(({ method }) => method === "post")?.path ?? "/v1/none";
const json = { "content-type": "application/json" };

afterAll(() => expect(failures).toEqual([]));

describe("every answer", () => {
	const cases: readonly (readonly [name: string, path: string, init: RequestInit, status: number])[] = [
		["200", "/v1/meta", {}, 200],
		["400", "/v1/meta?x=1", {}, 400],
		["404", "/nowhere", {}, 404],
		["405", "/v1/meta", { method: "DELETE" }, 405],
		["406", "/v1/meta", { headers: { accept: "text/html" } }, 406],
		["415", post, { method: "POST", body: "{}", headers: { "content-type": "text/plain" } }, 415],
		["204", "/v1/meta", { method: "OPTIONS" }, 204],
	];
	it.each(cases)("%s carries the request id and the CORS headers", async (_name, path, init, status) => {
		const response = await app.request(path, {
			...init,
			headers: { ...init.headers, "x-request-id": "abc-123" },
		});
		expect(response.status).toBe(status);
		expect(response.headers.get("x-request-id")).toBe("abc-123");
		expect(response.headers.get("access-control-allow-origin")).toBe("*");
		expect(response.headers.get("access-control-expose-headers")).toBe("*"); // every name: no answer carries credentials
		expect(response.headers.get("x-content-type-options")).toBe("nosniff");
	});

	it("is kept apart by Accept where there are several forms of it, and only there", async () => {
		const day = "/v1/sun/day?latitude=27.7&longitude=85.3&elevationM=1400&date=2025-01-15";
		const vary = async (path: string, accept: string) =>
			(await app.request(path, { headers: { accept } })).headers.get("vary");
		expect(await vary(day, "image/svg+xml")).toBe("Accept");
		expect(await vary(day, "application/json")).toBe("Accept");
		expect(await vary("/", "application/json")).toBe("Accept");
		expect(await vary("/health/live", "*/*")).toBeNull();
		expect(await vary("/v1/boiling-point?elevationM=0", "*/*")).toBeNull();
	});

	it("a chart or table may stand in a page of another site, and does nothing but stand there", async () => {
		const day = "/v1/sun/day?latitude=27.7&longitude=85.3&elevationM=1400&date=2025-01-15";
		for (const accept of ["image/svg+xml", "text/csv"]) {
			const { status, headers } = await app.request(day, { headers: { accept } });
			expect(status).toBe(200);
			expect(headers.get("cross-origin-resource-policy")).toBe("cross-origin");
			expect(headers.get("content-security-policy")).toBe("default-src 'none'; frame-ancestors 'none'");
		}
	});

	it.each(["", "x".repeat(129), "a b", "id\u00e9", "<script>"])(
		"puts a new id for the unfit %j",
		async (id) => {
			const response = await app.request("/v1/meta", { headers: { "x-request-id": id } });
			expect(response.headers.get("x-request-id")).toMatch(/^[\da-f-]{36}$/);
		},
	);
});

it("a caller who leaves in the middle of a body is told from a failure of ours", async () => {
	for (const stated of [{}, { "content-length": "100" }]) {
		const body = new ReadableStream<Uint8Array>({
			pull: (controller) => controller.error(new Error("gone")),
		});
		const init = { method: "POST", headers: { ...json, ...stated }, body, duplex: "half" } as RequestInit;
		expect((await app.request(post, init)).status).toBe(499);
	}
});

describe("304", () => {
	it("spares a caller what it holds, and keeps the headers", async () => {
		const url = "/v1/boiling-point?elevationM=3000";
		const tag = (await app.request(url)).headers.get("etag")!;
		for (const held of [tag, `W/${tag}`, `"other", ${tag}`, "*"]) {
			const response = await app.request(url, { headers: { "if-none-match": held, "x-request-id": "mine" } });
			expect(response.status).toBe(304);
			expect(await response.text()).toBe("");
			expect(response.headers.get("etag")).toBe(tag);
			expect(response.headers.get("x-request-id")).toBe("mine");
			expect(response.headers.get("access-control-allow-origin")).toBe("*");
			expect(response.headers.get("cache-control")).toContain("max-age=");
		}
	});

	it("gives the whole answer to one who holds another", async () => {
		const response = await app.request("/v1/meta", { headers: { "if-none-match": '"other"' } });
		expect(response.status).toBe(200);
	});
});

describe("HEAD and OPTIONS", () => {
	it("answers HEAD as GET without the body", async () => {
		const [head, get] = await Promise.all(
			["HEAD", "GET"].map((method) => app.request("/v1/boiling-point?elevationM=0", { method })),
		);
		expect(head!.status).toBe(200);
		expect(await head!.text()).toBe("");
		expect(head!.headers.get("etag")).toBe(get!.headers.get("etag"));
	});

	it("answers a preflight with what may be sent, to be kept for a day", async () => {
		const response = await app.request("/v1/boiling-point", {
			method: "OPTIONS",
			headers: { origin: "https://shop.example", "access-control-request-method": "GET" },
		});
		expect(response.status).toBe(204);
		expect(response.headers.get("access-control-allow-methods")).toBe("GET, HEAD, OPTIONS");
		expect(response.headers.get("access-control-max-age")).toBe("86400");
		for (const name of ["Content-Type", "X-Api-Key", "X-Request-Id"])
			expect(response.headers.get("access-control-allow-headers")).toContain(name);
	});
});

describe("404 and 405", () => {
	it("says where to look", async () => {
		const problem = await problemIn(await app.request("/v1/boilingpoint"));
		expect(problem).toMatchObject({ status: 404, type: "urn:raykettle:problem:not-found" });
	});

	it.each(operations.map(({ path, method }) => [path, method] as const))(
		"names what %s takes",
		async (path, method) => {
			const response = await app.request(path, { method: "PUT" });
			expect(response.headers.get("allow")).toBe(method === "get" ? "GET, HEAD, OPTIONS" : "POST, OPTIONS");
			expect((await problemIn(response)).status).toBe(405);
		},
	);
});

describe("406", () => {
	it.each([
		"application/json",
		"*/*",
		"application/*",
		"text/html, */*;q=0.1",
		"application/json;q=0.5, text/html",
	])("does not refuse %s", async (accept) => {
		expect((await app.request("/v1/meta", { headers: { accept } })).status).toBe(200);
	});

	it.each(["text/html", "application/json;q=0", "*/*, application/json;q=0", "image/*"])(
		"refuses %s",
		async (accept) => {
			expect((await problemIn(await app.request("/v1/meta", { headers: { accept } }))).status).toBe(406);
		},
	);
});

describe.skipIf(post === "/v1/none")("a body", () => {
	const send = (body: BodyInit | undefined, headers: Record<string, string> = json) =>
		app.request(post, { method: "POST", headers, ...(body !== undefined && { body }) });

	it.each(["", "  ", "{", '{"a":NaN}', "[1,]", "undefined", '{"a":1}{', "'x'", '{"a":01}'])(
		"that reads %j is malformed",
		async (body) => {
			const problem = await problemIn(await send(body));
			expect(problem).toMatchObject({ status: 400, type: "urn:raykettle:problem:malformed-json" });
		},
	);

	it.each(["null", "3", "[]", '"text"', "true"])("that reads %s is the wrong type", async (body) => {
		const { status, errors } = await problemIn(await send(body));
		expect(status).toBe(400);
		expect(errors?.[0]).toMatchObject({ in: "body", pointer: "", code: "wrong_type" });
	});

	it("names an unknown key by a pointer to the key itself, whatever it is called", async () => {
		const { errors } = await problemIn(await send('{"a/b~c":1,"__proto__":{"x":1},"constructor":2}'));
		const pointers = errors?.filter(({ code }) => code === "unknown").map(({ pointer }) => pointer);
		expect(pointers).toEqual(expect.arrayContaining(["/a~1b~0c", "/__proto__", "/constructor"]));
	});

	it("may begin with a byte order mark", async () => {
		expect((await problemIn(await send("\ufeffnull"))).type).toBe("urn:raykettle:problem:invalid-request");
	});

	it("deeply nested is refused like any other", async () => {
		expect((await problemIn(await send("[".repeat(60_000) + "]".repeat(60_000)))).status).toBe(400);
	});

	it("with very many faults lists the first hundred", async () => {
		const keys = Object.fromEntries(Array.from({ length: 20_000 }, (_, i) => [`k${i}`, 1]));
		const started = performance.now();
		const { errors, detail } = await problemIn(await send(JSON.stringify(keys)));
		expect(performance.now() - started).toBeLessThan(1000);
		expect(errors).toHaveLength(LIMITS.faultsListed.value);
		expect(detail).toContain("100 or more faults");
	});

	it.each([
		{},
		{ "content-type": "text/plain" },
		{ "content-type": "application/x-www-form-urlencoded" },
		{ "content-type": "application/json; charset=latin1" },
		{ ...json, "content-encoding": "gzip" },
	])("sent as %o is not read", async (headers) => {
		expect((await problemIn(await send(new TextEncoder().encode("{}"), headers))).status).toBe(415);
	});

	it.each(["application/json; charset=UTF-8", "application/vnd.plant+json", "APPLICATION/JSON"])(
		"sent as %s is read",
		async (type) => {
			expect((await problemIn(await send("{", { "content-type": type }))).status).toBe(400);
		},
	);

	it("over the limit is refused by its stated length, or counted when none is stated", async () => {
		const limit = USUAL_SETTINGS.bodyBytes;
		const stated = await problemIn(await send("{}", { ...json, "content-length": String(limit + 1) }));
		expect(stated).toMatchObject({ status: 413, detail: expect.stringContaining(String(limit)) });
		expect((await problemIn(await send(" ".repeat(limit + 1)))).status).toBe(413);
		expect((await problemIn(await send(" ".repeat(limit)))).status).toBe(400);
	});

	it("with a length that is no number is refused", async () => {
		expect((await problemIn(await send("{}", { ...json, "content-length": "many" }))).status).toBe(411);
	});
});

describe("500", () => {
	it("tells the operator what happened, and the caller only that it did", async () => {
		const seen: unknown[] = [];
		const broken = createApp({ indexPage: undefined, onFailure: (error, id) => seen.push(error, id) });
		broken.get("/broken", () => {
			throw new Error("secret of the house");
		});
		const problem = await problemIn(await broken.request("/broken", { headers: { "x-request-id": "r-1" } }));
		expect(problem).toMatchObject({ status: 500, type: "urn:raykettle:problem:internal", requestId: "r-1" });
		expect(JSON.stringify(problem)).not.toContain("secret");
		expect(seen).toEqual([expect.objectContaining({ message: "secret of the house" }), "r-1"]);
	});
});

describe("documents", () => {
	it("gives the index as JSON to a program and as a page to a browser", async () => {
		const program = await app.request("/");
		expect(await program.json()).toMatchObject({ contract: "/openapi.json" });
		const browser = await app.request("/", {
			headers: { accept: "text/html,application/xhtml+xml,*/*;q=0.8" },
		});
		expect(browser.headers.get("content-type")).toBe("text/html; charset=utf-8");
	});

	it("serves the contract under an entity tag", async () => {
		const response = await app.request("/openapi.json");
		expect(await response.json()).toMatchObject({ openapi: "3.1.0" });
		const again = await app.request("/openapi.json", {
			headers: { "if-none-match": response.headers.get("etag")! },
		});
		expect(again.status).toBe(304);
	});
});

describe("on Node", () => {
	const server: Server = createNodeServer(app);
	afterAll(() => server.close());

	/** Sends bytes as they are and gives back all that comes. */
	function raw(bytes: string): Promise<string> {
		if (!server.listening) server.listen(0);
		const { port } = server.address() as { port: number };
		return new Promise((resolve, reject) => {
			const socket = connect(port, "127.0.0.1", () => socket.write(bytes));
			let answer = "";
			socket.on("data", (chunk) => {
				answer += chunk;
			});
			socket.on("close", () => resolve(answer));
			socket.on("error", reject);
		});
	}

	it("answers over a socket", async () => {
		const response = await request(server).get("/v1/boiling-point").query({ elevationM: 3000 });
		expect(response.status).toBe(200);
		expect(response.body.boilingPointC).toBeCloseTo(89.97, 2);
		expect(response.headers["x-request-id"]).toMatch(/^[\da-f-]{36}$/);
	});

	it.skipIf(post === "/v1/none")("counts a body sent in chunks", async () => {
		const [head, chunk] = [`POST ${post} HTTP/1.1\r\nHost: x\r\n`, " ".repeat(65_536)];
		const body = `10000\r\n${chunk}\r\n`.repeat(5);
		const answer = await raw(
			`${head}Content-Type: application/json\r\nTransfer-Encoding: chunked\r\nConnection: close\r\n\r\n${body}0\r\n\r\n`,
		);
		expect(answer).toMatch(/^HTTP\/1\.1 413 /);
	});

	it.skipIf(post === "/v1/none")("takes a POST without a body for an empty one", async () => {
		const answer = await raw(
			`POST ${post} HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\nConnection: close\r\n\r\n`,
		);
		expect(answer).toMatch(/^HTTP\/1\.1 400 /);
		expect(answer).toContain("malformed-json");
	});

	it.each([
		["what is not HTTP", "NONSENSE\r\n\r\n", 400, "malformed-request"],
		[
			"headers too large",
			`GET / HTTP/1.1\r\nHost: x\r\nX-Long: ${"y".repeat(20_000)}\r\n\r\n`,
			431,
			"headers-too-large",
		],
	])("answers %s with a problem", async (_name, bytes, status, kind) => {
		const [head, body] = (await raw(bytes)).split("\r\n\r\n");
		expect(head).toMatch(new RegExp(`^HTTP/1.1 ${status} `));
		expect(head).toContain("Access-Control-Allow-Origin: *");
		const problem = JSON.parse(body!) as { type: string; requestId: string };
		expect(problem.type).toBe(`urn:raykettle:problem:${kind}`);
		expect(head).toContain(`X-Request-Id: ${problem.requestId}`);
	});
});
