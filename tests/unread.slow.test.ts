import { type ChildProcessWithoutNullStreams, spawn } from "node:child_process";
import { connect, type Socket } from "node:net";
import { setTimeout as pause } from "node:timers/promises";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, it } from "vitest";
import { warmUp } from "../api/operations/warm-up/route.ts";

// Callers who ask for much and read nothing, against the whole service in a process: what they hold, and that they lose it.

const ENTRY = fileURLToPath(new URL("../api/server.ts", import.meta.url));
const CONNECTIONS = 40;
const HELD = 64; // [MB] that answers may hold
const SPARE = 250; // [MB] for the threads, the answer being put together and what the collector has not looked at

let server: ChildProcessWithoutNullStreams;
let url: URL;
let metrics = "";
beforeAll(async () => {
	const { PATH = "" } = process.env;
	const settings = {
		...{ PORT: "0", METRICS_PORT: "0", POOL_THREADS: "1", RATE_REQUESTS: "0", LOG_LEVEL: "silent" },
		...{ COMPUTING_BUDGET: "100000", ANSWER_BYTES: "33554432", UNREAD_MB: String(HELD), UNREAD_TIME_S: "3" },
	};
	server = spawn(process.execPath, ["--import", "tsx", ENTRY], { env: { PATH, ...settings } });
	let text = "";
	server.stdout.setEncoding("utf8").on("data", (piece: string) => {
		text += piece;
	});
	const says = async (pattern: RegExp): Promise<string> => {
		for (;;) {
			const match = pattern.exec(text)?.[1];
			if (match) return match;
			await pause(20);
		}
	};
	url = new URL(await says(/listens on (http\S+)/));
	metrics = await says(/Metrics on (http\S+)/);
}, 60_000);
afterAll(() => server.kill("SIGKILL"));

/** 24 kB of request that become some 15 MB of answer. */
const items = Array.from({ length: 100 }, () => ({
	operation: "warmUpTank",
	body: { ...warmUp.examples.least!.value, seriesStepMin: 1 },
}));
const body = JSON.stringify({ items });
const request = [
	...["POST /v1/batch HTTP/1.1", "Host: raykettle.test", "Content-Type: application/json"],
	...[`Content-Length: ${Buffer.byteLength(body)}`, "", body],
].join("\r\n");

/** Asks for much and never reads. */
function unreading(): Socket {
	const socket = connect(Number(url.port), url.hostname, () => socket.write(request));
	socket.on("error", () => {});
	socket.pause();
	return socket;
}

async function residentMb(): Promise<number> {
	const text = await (await fetch(metrics)).text();
	return Number(/^process_resident_memory_bytes (\S+)$/m.exec(text)?.[1]) / 2 ** 20;
}

/** An honest caller, who reads what he is told. */
async function asked() {
	const response = await fetch(new URL("/v1/batch", url), {
		...{ method: "POST", body, headers: { "Content-Type": "application/json" } },
	});
	const { length } = await response.text();
	return { status: response.status, retryAfter: response.headers.get("retry-after"), length };
}

it("callers who never read their answers hold no more than they may, and are cut off", {
	timeout: 90_000,
}, async () => {
	const { length } = await asked(); // the day is remembered from here on: only the batches cost
	expect(CONNECTIONS * length).toBeGreaterThan((HELD + SPARE) * 2 ** 20);
	const before = await residentMb();
	const callers: Socket[] = [];
	let most = 0;
	for (let i = 0; i < CONNECTIONS; i++) {
		callers.push(unreading());
		await pause(30);
		most = Math.max(most, await residentMb());
		expect((await fetch(new URL("/health/live", url))).status).toBe(200);
	}
	expect(await asked()).toMatchObject({ status: 503, retryAfter: "1" });
	for (const begun = performance.now(); performance.now() - begun < 30_000; await pause(500)) {
		most = Math.max(most, await residentMb());
		if ((await asked()).status === 200) break;
	}
	expect(await asked()).toMatchObject({ status: 200, length }); // what was held is let go of, though nobody read it
	expect(most - before).toBeLessThan(HELD + SPARE);
	for (const caller of callers) caller.destroy();
});
