import { Agent, request } from "node:http";
import { varied } from "./bodies.ts";

/** Clients who each ask again as soon as they are answered, a moment later where they were refused. */
export interface Clients {
	/** Stops asking and waits for the last answers: how often each status came, and how many asked at a time on average. */
	leave(): Promise<{ readonly statuses: ReadonlyMap<number, number>; readonly inFlight: number }>;
}

const PAUSE = 100; // [ms] before a refused client asks again
let nth = 0; // over all clients of this process, so that no two send the same

/** @param count  how many requests are in flight at most */
export function clients(url: string, post: string, count: number): Clients {
	const agent = new Agent({ keepAlive: true });
	const statuses = new Map<number, number>();
	const begun = performance.now();
	let asking = true;
	let busy = 0; // [ms] summed over all clients, of requests that were not refused
	const client = async () => {
		while (asking) {
			const sent = performance.now();
			const status = await posted(url, varied(post, nth++), agent);
			statuses.set(status, (statuses.get(status) ?? 0) + 1);
			if (status === 200) busy += performance.now() - sent;
			else await new Promise((resolve) => setTimeout(resolve, PAUSE));
		}
	};
	const all = Array.from({ length: count }, client);
	return {
		leave: async () => {
			asking = false;
			await Promise.all(all);
			agent.destroy();
			return { statuses, inFlight: busy / (performance.now() - begun) };
		},
	};
}

/** The status that a POST is answered with; 0 where no answer comes. */
function posted(url: string, body: string, agent: Agent): Promise<number> {
	const headers = { "Content-Type": "application/json", "Content-Length": Buffer.byteLength(body) };
	return new Promise((resolve) => {
		const lost = () => resolve(0);
		request(url, { agent, method: "POST", headers }, (answer) => {
			answer.resume().on("error", lost);
			answer.on("end", () => resolve(answer.statusCode ?? 0));
		})
			.on("error", lost)
			.end(body);
	});
}
