import { Agent } from "node:http";
import { asked } from "../asked.ts";
import { sensitivity, varied } from "../bodies.ts";
import { type Service, service } from "../service.ts";
import type { Bound } from "../table.ts";

const WORKING = 300; // [ms] that the service is let work
const NOTICED = 100; // [ms] after which it must have stopped
const WATCHED = 500; // [ms]
const MOST = 0.2; // of a core that an idle service may use, its collector included

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** A request of more than a second, its range told as well. */
const long = sensitivity.post.replace(/}$/, ',"withRange":true}');

/** A caller who goes away takes the work with him. */
export async function callersWhoLeave(): Promise<readonly Bound[]> {
	const raykettle = await service({ POOL_THREADS: "1" }, []);
	const agent = new Agent();
	const whole = await ask(raykettle, agent, 1);
	const leaving = ask(raykettle, agent, 2, WORKING);
	await pause(WORKING / 2);
	const running = await poolDepth(raykettle);
	await leaving;
	await pause(NOTICED);
	const before = raykettle.cpu();
	await pause(WATCHED);
	const used = (raykettle.cpu() - before) / (WATCHED / 1000);
	const left = await poolDepth(raykettle);
	const again = await ask(raykettle, agent, 3);
	await raykettle.end();
	return [
		{
			name: "a long answer, to stay for",
			holds: whole.status === 200 && whole.took > WORKING + NOTICED + WATCHED,
			found: `${whole.status} after ${whole.took.toFixed(0)} ms`,
		},
		{ name: "pool at work while its caller stays", holds: running === 1, found: String(running) },
		{
			name: `pool at work ${NOTICED + WATCHED} ms after he left`,
			holds: left === 0,
			found: String(left),
		},
		{
			name: `cores in use from ${NOTICED} ms after he left`,
			holds: used <= MOST,
			found: `${used.toFixed(2)} (at most ${MOST})`,
		},
		{ name: "the next caller", holds: again.status === 200, found: String(again.status) },
	];
}

async function ask({ url }: Service, agent: Agent, nth: number, leaveAfter?: number) {
	const begun = performance.now();
	const body = varied(long, nth);
	const { status } = await asked(
		url,
		{ method: "POST", path: sensitivity.path, body, ...(leaveAfter !== undefined && { leaveAfter }) },
		agent,
	);
	return { status, took: performance.now() - begun };
}

/** How many answers the pool is at work on. */
async function poolDepth({ metrics }: Service): Promise<number> {
	const text = await (await fetch(metrics)).text();
	return Number(/^raykettle_pool_answers\{state="running"\} (\d+)$/m.exec(text)?.[1]);
}
