import { once } from "node:events";
import { connect, type Socket } from "node:net";
import { service } from "../service.ts";
import type { Bound } from "../table.ts";

const ARRIVAL = 30; // [s] for a request to arrive whole, as /v1/meta says
const CHECKED = 3; // [s] after which it must be noticed
const PIECE = "x".repeat(16_384);

interface Cut {
	readonly status: number;
	readonly seconds: number; // until the connection was closed
}

/** Bodies that stall, trickle or never end are cut off, and others are answered meanwhile. */
export async function endlessBodies(): Promise<readonly Bound[]> {
	const raykettle = await service({ POOL_THREADS: "1" }, []);
	const [stalled, trickling, endless] = await Promise.all([
		cut(raykettle.port, "Content-Length: 1000", async () => undefined),
		cut(raykettle.port, "Transfer-Encoding: chunked", trickle),
		cut(raykettle.port, "Transfer-Encoding: chunked", flood),
	]);
	const alive = (await fetch(`${raykettle.url}/health/live`)).status;
	await raykettle.end();
	return [
		bound("a body that stalls", stalled, 408, ARRIVAL + CHECKED),
		bound("a body that trickles", trickling, 408, ARRIVAL + CHECKED),
		bound("a body without end", endless, 413, CHECKED),
		{ name: "and the next request", holds: alive === 200, found: String(alive) },
	];
}

const bound = (name: string, { status, seconds }: Cut, wanted: number, within: number): Bound => ({
	name: `${name} is cut off`,
	holds: status === wanted && seconds <= within,
	found: `${status} and closed after ${seconds.toFixed(1)} s (${wanted} within ${within} s)`,
});

/** Sends the head of a POST and then whatever the sender sends, until the connection is closed. */
async function cut(port: number, header: string, send: (socket: Socket) => Promise<void>): Promise<Cut> {
	const socket = connect(port, "127.0.0.1");
	let answer = "";
	socket.setEncoding("utf8").on("data", (text: string) => (answer += text));
	const closed = new Promise<void>((resolve) => socket.on("close", () => resolve()));
	socket.on("error", () => undefined); // a reset closes as well
	await once(socket, "connect");
	const begun = performance.now();
	socket.write(
		`POST /v1/tank/warm-up HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\n${header}\r\n\r\n`,
	);
	await Promise.race([closed, send(socket).then(() => closed)]);
	return {
		status: Number(/^HTTP\/1\.1 (\d{3})/.exec(answer)?.[1] ?? 0),
		seconds: (performance.now() - begun) / 1000,
	};
}

/** A byte a second. */
async function trickle(socket: Socket): Promise<void> {
	while (socket.writable) {
		socket.write("1\r\n \r\n");
		await new Promise((resolve) => setTimeout(resolve, 1000));
	}
}

/** As much as the other side takes. */
async function flood(socket: Socket): Promise<void> {
	const chunk = `${PIECE.length.toString(16)}\r\n${PIECE}\r\n`;
	while (socket.writable) {
		socket.write(chunk);
		await new Promise((resolve) => setTimeout(resolve, 1));
	}
}
