import { Agent } from "node:http";
import { asked } from "../asked.ts";
import { boilingPoint, sensitivity, varied } from "../bodies.ts";
import type { Bound } from "../table.ts";
import { type Watched, watched } from "../watched.ts";

const THREADS = 2;
const WORKING = 50; // [ms] before the threads are killed

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** Pool threads that die in the middle of their work cost those two answers and nothing else. */
export async function deadThreads(): Promise<readonly Bound[]> {
	const raykettle = await watched({ POOL_THREADS: String(THREADS) });
	const agent = new Agent({ keepAlive: true });
	await Promise.all([ask(raykettle, agent, 1), ask(raykettle, agent, 2)]); // both threads are up
	const heavy = [ask(raykettle, agent, 3), ask(raykettle, agent, 4)];
	await pause(WORKING);
	const light = Array.from({ length: 20 }, () =>
		asked(raykettle.url, { method: "GET", path: boilingPoint.path }, agent),
	);
	const told = await raykettle.ask("kill");
	const killed = "killed" in told ? told.killed : 0;
	const lost = await Promise.all(heavy);
	const unharmed = await Promise.all(light);
	const next = await Promise.all([ask(raykettle, agent, 5), ask(raykettle, agent, 6)]);
	await raykettle.end();
	agent.destroy();
	const statuses = (of: readonly { readonly status: number }[]) => of.map(({ status }) => status).join(", ");
	return [
		{ name: "threads killed in mid-work", holds: killed === THREADS, found: String(killed) },
		{
			name: "their requests",
			holds: lost.every(({ status, text }) => status === 503 && isProblem(text)),
			found: statuses(lost),
		},
		{
			name: "light requests meanwhile",
			holds: unharmed.every(({ status }) => status === 200),
			found: `${unharmed.filter(({ status }) => status === 200).length} of ${unharmed.length} answered`,
		},
		{ name: "the next ones", holds: next.every(({ status }) => status === 200), found: statuses(next) },
	];
}

const ask = ({ url }: Watched, agent: Agent, nth: number) =>
	asked(url, { method: "POST", path: sensitivity.path, body: varied(sensitivity.post, nth) }, agent);

function isProblem(text: string): boolean {
	const { type, title, status } = JSON.parse(text) as Record<string, unknown>;
	return typeof type === "string" && typeof title === "string" && status === 503;
}
