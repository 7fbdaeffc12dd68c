import { Agent, type IncomingHttpHeaders, request } from "node:http";
import { buffer } from "node:stream/consumers";

/** What is asked, apart from whom. */
export interface Question {
	readonly name: string;
	readonly method: "GET" | "POST";
	readonly path: string;
	readonly body?: string;
	readonly headers?: Readonly<Record<string, string>>;
	readonly from?: string; // the loopback address that asks; 127.0.0.1 unless given
}

export interface Answer {
	readonly status: number;
	readonly headers: IncomingHttpHeaders;
	readonly body: Buffer;
}

const PATIENCE = 40_000; // [ms] more than any proxy or server in between has
const agent = new Agent({ keepAlive: true, maxSockets: 64 });

/** Asks whoever listens on a port of this machine. Rejects where the connection fails before the answer is whole. */
export function ask(port: number, { method, path, body, headers, from }: Question): Promise<Answer> {
	return new Promise((resolve, reject) => {
		const asked = request(
			{
				...{ host: "127.0.0.1", port, method, path, agent, timeout: PATIENCE },
				...(from !== undefined && { localAddress: from }),
				headers: {
					...(body !== undefined && { "Content-Type": "application/json" }),
					...(body !== undefined && { "Content-Length": Buffer.byteLength(body) }),
					...headers,
				},
			},
			(answer) =>
				buffer(answer).then(
					(whole) => resolve({ status: answer.statusCode ?? 0, headers: answer.headers, body: whole }),
					reject,
				),
		);
		asked.on("error", reject).on("timeout", () => asked.destroy(new Error(`no answer in ${PATIENCE} ms`)));
		asked.end(body);
	});
}

/** Asks until the answer is 200. */
export async function until200(port: number, path: string, patience: number): Promise<void> {
	const end = performance.now() + patience;
	for (;;) {
		const status = await ask(port, { name: path, method: "GET", path }).then(
			(answer) => answer.status,
			() => 0,
		);
		if (status === 200) return;
		if (performance.now() > end) throw new Error(`port ${port} does not answer ${path} with 200: ${status}`);
		await new Promise((resolve) => setTimeout(resolve, 20));
	}
}

export const closeConnections = (): void => agent.destroy();
