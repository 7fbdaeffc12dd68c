import { Agent } from "node:http";
import { asked } from "./asked.ts";
import { varied } from "./bodies.ts";

/** Clients who each ask again as soon as they are answered, a moment later where they were refused. */
export interface Clients {
	/** Stops asking and waits for the last answers: how often each status came, and how many asked at a time on average. */
	leave(): Promise<{ readonly statuses: ReadonlyMap<number, number>; readonly inFlight: number }>;
}

interface Job {
	readonly path: string;
	readonly post: string;
}

const PAUSE = 100; // [ms] before a refused client asks again
let nth = 0; // over all clients of this process, so that no two send the same

/** @param job    where to post what, its # varied
 *  @param count  how many requests are in flight at most */
export function clients(url: string, { path, post }: Job, count: number): Clients {
	const agent = new Agent({ keepAlive: true });
	const statuses = new Map<number, number>();
	const begun = performance.now();
	let asking = true;
	let busy = 0; // [ms] summed over all clients, of requests that were not refused
	const client = async () => {
		while (asking) {
			const sent = performance.now();
			const { status } = await asked(url, { method: "POST", path, body: varied(post, nth++) }, agent);
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
