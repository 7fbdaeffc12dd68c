import { getEventListeners } from "node:events";
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { describe, expect, it } from "vitest";
import { createRaykettle, type RaykettleOptions } from "../../sdk/index.ts";
import { limited } from "../../sdk/limited.ts";

type Fetch = NonNullable<RaykettleOptions["fetch"]>;
const client = (fetch: Fetch, timeoutMs = 30_000) =>
	createRaykettle({ baseUrl: "http://service.test", fetch, timeoutMs, retries: 1 });

const fine = async () => Response.json({ status: "live" });

const silent: Fetch = (_url, { signal }) =>
	new Promise<Response>((_, reject) => {
		if (signal.aborted) reject(signal.reason);
		signal.addEventListener("abort", () => reject(signal.reason));
	});

const timers = () => process.getActiveResourcesInfo().filter((kind) => kind === "Timeout").length;

describe("a program that runs for ever with one signal of its own", () => {
	const { signal } = new AbortController();
	const listeners = () => getEventListeners(signal, "abort").length;

	it("has as many listeners and timers after thousands of calls as before", async () => {
		const before = timers();
		const raykettle = client(fine);
		let most = 0;
		for (let i = 0; i < 5000; i++) {
			const call = raykettle.liveness({ signal });
			most = Math.max(most, listeners());
			await call;
		}
		expect(most).toBe(1);
		expect(listeners()).toBe(0);
		expect(timers()).toBe(before);
	});

	it("has them back from calls that fail, are refused, asked again or run out of time", async () => {
		const before = timers();
		const failing = client(async () => {
			throw new TypeError("no line");
		});
		const refusing = client(async () => new Response("{}", { status: 422 }));
		const busy = client(async () => new Response("{}", { status: 503, headers: { "Retry-After": "0" } }));
		const late = client(silent, 5);
		for (const raykettle of [failing, refusing, busy, late])
			await expect(raykettle.liveness({ signal })).rejects.toThrow();
		expect(listeners()).toBe(0);
		expect(timers()).toBe(before);
	});

	it("keeps nothing of them in memory", async () => {
		setFlagsFromString("--expose-gc");
		const collected = () => {
			(runInNewContext("gc") as () => void)();
			return process.memoryUsage().heapUsed;
		};
		const calls = async (count: number) => {
			for (let i = 0; i < count; i++) await limited(signal, 1000, async () => i);
		};
		await calls(2000);
		const before = collected();
		await calls(20_000);
		expect((collected() - before) / 20_000).toBeLessThan(100); // [bytes] a call; AbortSignal.any keeps some 400 on Node 20
	});
});

describe("a call", () => {
	it("that its caller ends rejects with his reason, whatever that is", async () => {
		for (const reason of [new Error("enough"), "no more"]) {
			const controller = new AbortController();
			const call = client(silent).liveness({ signal: controller.signal });
			setTimeout(() => controller.abort(reason), 5);
			await expect(call).rejects.toBe(reason);
			expect(getEventListeners(controller.signal, "abort")).toHaveLength(0);
		}
	});

	it("that its caller ended before it began does so too", async () => {
		const signal = AbortSignal.abort("too late");
		await expect(client(silent).liveness({ signal })).rejects.toBe("too late");
		expect(getEventListeners(signal, "abort")).toHaveLength(0);
	});

	it("whose time is up rejects with a TimeoutError, within a body that never ends as well", async () => {
		const endless: Fetch = async (_url, { signal }) =>
			new Response(
				new ReadableStream({
					start: (body) => signal.addEventListener("abort", () => body.error(signal.reason)),
				}),
			);
		for (const fetch of [silent, endless]) {
			const error = await client(fetch, 10)
				.liveness()
				.catch((failure: unknown) => failure);
			expect(error).toBeInstanceOf(DOMException);
			expect(error).toMatchObject({ name: "TimeoutError" });
		}
	});

	it.each([0, 2 ** 40])(
		"may have %d ms, which is no limit or longer than a timer runs",
		async (timeoutMs) => {
			const slow = () => new Promise<Response>((resolve) => setTimeout(() => resolve(Response.json({})), 30));
			expect(await client(slow, timeoutMs).liveness()).toEqual({});
		},
	);
});
