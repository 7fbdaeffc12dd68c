import { describe, expect, it } from "vitest";
import { createRaykettle, type RaykettleOptions, RaykettleProblem } from "../../sdk/index.ts";
import { raykettle } from "../contract/service.ts";

/** A service that answers as told, one answer after the other, and remembers what it was asked. */
function scripted(...answers: readonly Response[]) {
	const asked: Request[] = [];
	const fetch: RaykettleOptions["fetch"] = async (url, init) => {
		asked.push(new Request(url, init));
		const answer = answers[asked.length - 1];
		if (!answer) throw new Error("asked once too often");
		return answer;
	};
	const client = (options: Partial<RaykettleOptions> = {}) =>
		createRaykettle({ baseUrl: "http://service.test/", fetch, ...options });
	return { asked, client };
}

const busy = (status: 429 | 503, headers: Record<string, string> = { "Retry-After": "0" }) =>
	new Response(JSON.stringify({ title: "Busy", detail: "Come back", status }), { status, headers });
const fine = () => Response.json({ boilingPointC: 90 });

describe("what is sent", () => {
	it("puts a query behind the path, and repeats the name of a list", async () => {
		const { asked, client } = scripted(fine());
		await client().sunPosition({
			latitude: 1,
			longitude: 2,
			time: ["2025-01-01T00:00:00Z", "2025-01-02T00:00:00Z"],
		});
		const url = new URL(asked[0]!.url);
		expect(url.pathname).toBe("/v1/sun/position");
		expect(url.searchParams.getAll("time")).toEqual(["2025-01-01T00:00:00Z", "2025-01-02T00:00:00Z"]);
	});

	it("carries the key and the request id", async () => {
		const { asked, client } = scripted(fine());
		await client({ apiKey: "k-1" }).boilingPoint({ elevationM: 3000 }, { requestId: "mine" });
		expect(asked[0]!.headers.get("x-api-key")).toBe("k-1");
		expect(asked[0]!.headers.get("x-request-id")).toBe("mine");
	});

	it("asks for another form and gives its text", async () => {
		const { asked, client } = scripted(new Response("time,beam"));
		const options = { as: "text/csv" } as unknown as { requestId: string };
		expect(await client().meta(options)).toBe("time,beam");
		expect(asked[0]!.headers.get("accept")).toBe("text/csv");
	});
});

describe("what is missing", () => {
	it("is named before anything is sent: the address of the service", () => {
		for (const options of [{}, undefined, { baseUrl: undefined }])
			expect(() => createRaykettle(options as unknown as RaykettleOptions)).toThrow(
				new TypeError('createRaykettle needs a baseUrl, such as "https://solar.example.org"'),
			);
	});

	it("is named before anything is sent: a value of the path", async () => {
		const { asked, client } = scripted();
		for (const input of [{}, undefined, { id: undefined }, { id: null }, { id: "" }, { fromC: 20 }])
			await expect(client().fluid(input as unknown as { id: "water" })).rejects.toThrow(
				new TypeError("/v1/fluids/{id} needs id"),
			);
		expect(asked).toEqual([]);
	});
});

describe("a busy service", () => {
	it("is asked again after the time it names, with the whole body", async () => {
		const { asked, client } = scripted(busy(429), busy(503), fine());
		const body = { site: { latitude: 1, longitude: 2, elevationM: 3 }, date: "2025-01-01" };
		await client().warmUpTank(body as never);
		expect(asked.map(({ method }) => method)).toEqual(["POST", "POST", "POST"]);
		expect(await asked[2]!.json()).toEqual(body);
	});

	it("is waited for as long as it says", async () => {
		const { client } = scripted(busy(429, { "Retry-After": "1" }), fine());
		const before = performance.now();
		await client().boilingPoint({ elevationM: 3000 });
		expect(performance.now() - before).toBeGreaterThanOrEqual(990);
	});

	it("is asked no more often than allowed", async () => {
		const { asked, client } = scripted(busy(503), busy(503), busy(503), busy(503));
		const refused = await client()
			.liveness()
			.catch((error: unknown) => error);
		expect(refused).toMatchObject({ name: "RaykettleProblem", status: 503, retryAfterS: 0 });
		expect(asked).toHaveLength(3);
		await expect(client().liveness({ retries: 0 })).rejects.toThrow("Come back");
		expect(asked).toHaveLength(4);
	});

	it("is not waited for when it asks for more than half a minute", async () => {
		const { asked, client } = scripted(busy(429, { "Retry-After": "3600" }));
		await expect(client().liveness()).rejects.toMatchObject({ retryAfterS: 3600 });
		expect(asked).toHaveLength(1);
	});

	it("is not waited for when that would outlast the caller's own time: the refusal says more than a timeout", async () => {
		const { asked, client } = scripted(busy(429, { "Retry-After": "20" }));
		await expect(client().liveness({ timeoutMs: 5000 })).rejects.toMatchObject({ retryAfterS: 20 });
		expect(asked).toHaveLength(1);
	});

	it("a fault of the request is not tried twice", async () => {
		const { asked, client } = scripted(new Response("{}", { status: 422 }), fine());
		await expect(client().liveness()).rejects.toBeInstanceOf(RaykettleProblem);
		expect(asked).toHaveLength(1);
	});
});

describe("an end to waiting", () => {
	const silent: RaykettleOptions["fetch"] = (_url, { signal }) =>
		new Promise<Response>((_, reject) => signal.addEventListener("abort", () => reject(signal.reason)));

	it("comes when the time is up", async () => {
		const client = createRaykettle({ baseUrl: "http://service.test", fetch: silent, timeoutMs: 20 });
		await expect(client.liveness()).rejects.toMatchObject({ name: "TimeoutError" });
	});

	it("comes when the caller has had enough, also between two tries", async () => {
		const controller = new AbortController();
		const { client } = scripted(busy(503, { "Retry-After": "20" }), fine());
		const call = client().liveness({ signal: controller.signal });
		setTimeout(() => controller.abort(new Error("enough")), 20);
		await expect(call).rejects.toThrow("enough");
	});
});

describe("a problem", () => {
	it("keeps its status where a proxy speaks instead of the service", async () => {
		const { client } = scripted(
			new Response("<h1>Bad gateway</h1>", { status: 502, statusText: "Bad Gateway" }),
		);
		await expect(client().liveness()).rejects.toMatchObject({
			status: 502,
			type: "about:blank",
			message: "The service answered 502 Bad Gateway",
		});
	});

	it("tells of a page that stands where the service should", async () => {
		const { client } = scripted(new Response("<!doctype html>", { status: 200 }));
		await expect(client().boilingPoint({ elevationM: 3000 })).rejects.toMatchObject({
			name: "RaykettleProblem",
			status: 200,
			message: "The service answered 200 without JSON: is baseUrl right?",
		});
	});

	it("of the true service names every fault", async () => {
		const error = await raykettle
			.sunPosition({ latitude: 91, longitude: 181, time: ["2025-01-15T08:30:00Z"] })
			.catch((caught: unknown) => caught);
		expect((error as RaykettleProblem).errors.map(({ parameter }) => parameter)).toEqual([
			"latitude",
			"longitude",
		]);
	});
});
