import { connect } from "node:net";
import { setTimeout as sleep } from "node:timers/promises";
import { afterEach, describe, expect, it } from "vitest";
import { digestOf, hexOf, newKey } from "../../api/access/keys.ts";
import { problemIn } from "../contract/service.ts";
import { type OnWorkerd, onWorkerd } from "./workerd.ts";

// What the edge entry makes of its bindings and of bodies, in a workerd for each.

const PRESSURE = "/v1/boiling-point?elevationM=1";
const WARM_UP = "/v1/tank/warm-up";
const JSON_BODY = { "Content-Type": "application/json" };

let edge: OnWorkerd | undefined;
afterEach(async () => {
	await edge?.end();
	edge = undefined;
});

/** The runtime with these bindings, ended after the test. */
async function on(bindings: Readonly<Record<string, string>>): Promise<OnWorkerd> {
	edge = await onWorkerd(bindings);
	return edge;
}

describe("bindings", () => {
	it("choose settings, and count each address that the runtime in front tells", async () => {
		const { ask } = await on({ RATE_REQUESTS: "2", RATE_WINDOW_S: "600", COMPUTING_BUDGET: "100" });
		const from = (address: string, path = PRESSURE) =>
			ask(path, { headers: { "CF-Connecting-IP": address } });
		const statuses = [];
		for (let i = 0; i < 3; i += 1) statuses.push((await from("192.0.2.1")).status);
		expect(statuses).toEqual([200, 200, 429]);
		expect((await from("192.0.2.2")).headers.get("ratelimit-policy")).toBe('"default";q=2;w=600');
		const meta = (await (await from("2001:db8::1", "/v1/meta")).json()) as {
			limits: { name: string; value: number }[];
		};
		expect(meta.limits.find(({ name }) => name === "computingBudget")?.value).toBe(100);
	});

	it("hold who may ask", async () => {
		const key = newKey("secret");
		const keys = [{ id: "shop", kind: "secret", sha256: hexOf(await digestOf(key)) }];
		const { ask } = await on({ KEYS_REQUIRED: "true", KEYS: JSON.stringify({ keys }) });
		expect((await problemIn(await ask(PRESSURE))).status).toBe(401);
		expect(
			(await problemIn(await ask(PRESSURE, { headers: { "X-Api-Key": newKey("secret") } }))).status,
		).toBe(401);
		expect((await ask(PRESSURE, { headers: { "X-Api-Key": key } })).status).toBe(200);
		expect((await ask("/health/live")).status).toBe(200);
	});

	it("at fault answer nobody, and the operator reads every fault", async () => {
		const { ask, written } = await on({ KEYS_REQUIRED: "true", BODY_BYTES: "lots" });
		expect((await ask("/health/live")).status).toBe(500);
		await expect.poll(() => written.join("\n")).toContain("BODY_BYTES must be a whole number");
		expect(written.join("\n")).toContain("KEYS_REQUIRED needs KEYS");
	});
});

it("counts a body of unstated length as it comes, and cuts it off", async () => {
	const { ask } = await on({ BODY_BYTES: "16384" });
	/** So many chunks of ten thousand bytes, each made when it is asked for. */
	const chunks = (count: number) => {
		const chunk = new TextEncoder().encode(" ".repeat(10_000));
		let left = count;
		return new ReadableStream<Uint8Array>({
			pull: (controller) => (left-- > 0 ? controller.enqueue(chunk) : controller.close()),
		});
	};
	const kindOf = async (count: number) => {
		const sent = { method: "POST", headers: JSON_BODY, body: chunks(count), duplex: "half" };
		return (await problemIn(await ask(WARM_UP, sent as RequestInit))).type; // TypeScript knows no `duplex` yet
	};
	expect(await kindOf(1)).toBe("urn:raykettle:problem:malformed-json");
	expect(await kindOf(4)).toBe("urn:raykettle:problem:payload-too-large");
});

it("callers who leave half way take no room from others", async () => {
	const { ask, url } = await on({ CONCURRENCY: "2" });
	const head = `POST ${WARM_UP} HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\nContent-Length: 1000\r\n\r\n{`;
	const hangUp = async () => {
		const socket = connect(Number(url.port), url.hostname);
		socket.on("error", () => {});
		socket.write(head);
		await sleep(100);
		socket.destroy();
	};
	await Promise.all([hangUp(), hangUp(), hangUp()]);
	const status = async () => (await ask(WARM_UP, { method: "POST", headers: JSON_BODY, body: "{" })).status;
	await expect.poll(status, { timeout: 5000 }).toBe(400);
	for (let i = 0; i < 3; i += 1) expect(await status()).toBe(400);
});
