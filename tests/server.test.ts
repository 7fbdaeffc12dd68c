import { type ChildProcessWithoutNullStreams, spawn } from "node:child_process";
import { once } from "node:events";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { operations } from "../api/operations/index.ts";
import { Problem } from "../api/problem/problem.ts";

const ENTRY = fileURLToPath(new URL("../api/server.ts", import.meta.url));
const SECRET = "s3cr3t-of-the-caller"; // put wherever a caller can write

function started(environment: Readonly<Record<string, string>>) {
	const { PATH = "" } = process.env;
	return spawn(process.execPath, ["--import", "tsx", ENTRY], { env: { PATH, ...environment } });
}

/** Everything that a process writes, as it comes. */
function written(server: ChildProcessWithoutNullStreams) {
	let text = "";
	for (const stream of [server.stdout, server.stderr])
		stream.setEncoding("utf8").on("data", (piece: string) => {
			text += piece;
		});
	const says = async (pattern: RegExp): Promise<RegExpExecArray> => {
		for (;;) {
			const match = pattern.exec(text);
			if (match) return match;
			if (server.exitCode !== null) throw new Error(`it ended: ${text}`);
			await new Promise((resolve) => setTimeout(resolve, 20));
		}
	};
	return { says, text: () => text };
}

describe("a server with everything on", () => {
	const server = started({ PORT: "0", METRICS_PORT: "0", POOL_THREADS: "1", RATE_REQUESTS: "1000" });
	const output = written(server);
	let url = "";
	let metricsUrl = "";
	beforeAll(async () => {
		url = (await output.says(/listens on (http\S+)/))[1]!;
		metricsUrl = (await output.says(/Metrics on (http\S+)/))[1]!;
	});
	afterAll(() => server.kill("SIGKILL"));

	const warmUp = operations.find(({ operationId }) => operationId === "warmUpTank")!;
	const ask = (body: unknown, headers: Readonly<Record<string, string>> = {}) =>
		fetch(`${url}${warmUp.path}`, {
			method: "POST",
			headers: { "Content-Type": "application/json", ...headers },
			body: JSON.stringify(body),
		});

	it("answers costly work through the pool, in every form, packed for whoever takes it so", async () => {
		const body = warmUp.examples.least!.value;
		const response = await ask(body);
		expect(response.status).toBe(200);
		expect(response.headers.get("content-encoding")).toBe("gzip"); // fetch unpacks it
		expect(response.headers.get("vary")).toBe("Accept, Accept-Encoding");
		warmUp.output.parse(await response.json());
		const chart = await ask(body, { Accept: "image/svg+xml" });
		expect(await chart.text()).toMatch(/^<svg /);
		const plain = await ask(body, { "Accept-Encoding": "identity" });
		expect(plain.headers.get("content-encoding")).toBeNull();
		expect(plain.headers.get("vary")).toBe("Accept, Accept-Encoding");
	});

	it("passes on what the core refuses in a thread", async () => {
		const response = await ask({ ...warmUp.examples.least!.value, startTime: "18:00", endTime: "08:00" });
		expect(response.status).toBe(422);
		expect(Problem.parse(await response.json()).errors?.[0]?.in).toBe("body");
	});

	it("serves metrics on a port of their own, with no name that a caller chose", async () => {
		await fetch(`${url}/${SECRET}`);
		await fetch(`${url}/health/live`); // goes well, so nobody is told
		const metrics = await (await fetch(metricsUrl)).text();
		expect(metrics).toMatch(
			/raykettle_request_duration_seconds_count{operation="warmUpTank",status="200"} 3/,
		);
		expect(metrics).toMatch(/raykettle_request_duration_seconds_count{operation="none",status="404"} 1/);
		expect(metrics).toMatch(/raykettle_pool_answers{state="running"} 0/);
		expect(metrics).toContain("process_resident_memory_bytes");
		expect(metrics).not.toContain(SECRET);
		expect(metrics).not.toContain("getLiveness");
		expect((await fetch(`${url}/metrics`)).status).toBe(404);
		expect((await fetch(new URL("/", metricsUrl))).status).toBe(404);
	});

	it("ends on SIGTERM with 0, and has logged each request but nothing that a caller sent", async () => {
		await ask({ [SECRET]: 1 }, { "X-Api-Key": SECRET, "User-Agent": SECRET, Cookie: SECRET });
		await fetch(`${url}/v1/boiling-point?elevationM=2350&${SECRET}=1`, {
			headers: { "X-Request-Id": "mine-1" },
		});
		server.kill("SIGTERM");
		const [code] = await once(server, "exit");
		expect(code).toBe(0);
		const lines = output
			.text()
			.split("\n")
			.filter((line) => line.startsWith("{"))
			.map((line) => JSON.parse(line) as Record<string, unknown>);
		const requests = lines.filter(({ msg }) => msg === "request");
		expect(requests.find(({ requestId }) => requestId === "mine-1")).toMatchObject({
			...{ operation: "getBoilingPoint", method: "GET", status: 400, ms: expect.any(Number) },
		});
		expect(requests.length).toBeGreaterThanOrEqual(7);
		expect(output.text()).not.toContain(SECRET);
	});
});

it("does not start with settings that make no sense, and names them all", async () => {
	const server = started({ PORT: "http", POOL_THREADS: "many" });
	const output = written(server);
	const [code] = await once(server, "close");
	expect(code).toBe(1);
	expect(output.text()).toMatch(/^Raykettle cannot start: PORT must be .*; POOL_THREADS must be .*\n$/);
});
