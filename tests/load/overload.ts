/** What becomes of four times the requests that can be answered. Run with `npm run load:overload` after a build. */
import { warmUp } from "./bodies.ts";
import { clients } from "./clients.ts";
import type { Fate } from "./open-loop.ts";
import { paced } from "./paced.ts";
import { service } from "./service.ts";
import { pinThis, placeWords } from "./spawned.ts";
import { judge, percentile, table } from "./table.ts";

const SECONDS = 10;
const CLIENTS = 2; // keep one thread busy without a line before it
const SETTLING = 1; // [s] in which the service may find out that it is overloaded
const OVER = 4; // times its capacity
const IDLE = 0.1; // of its capacity
const MOST = 3; // times as long as when idle may an accepted request wait

pinThis();
const raykettle = await service({ POOL_THREADS: "1" }, []);
const url = raykettle.url + warmUp.path;
const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** Answers a second when the next request comes as soon as one is answered. */
async function capacity(seconds: number): Promise<number> {
	const begun = performance.now();
	const asking = clients(raykettle.url, warmUp, CLIENTS);
	await pause(seconds * 1000);
	const { statuses } = await asking.leave();
	return ((statuses.get(200) ?? 0) / (performance.now() - begun)) * 1000;
}

await capacity(3); // warms up
const most = await capacity(SECONDS);
await pause(1000);
const idle = await paced({ url, post: warmUp.post, perSecond: most * IDLE, seconds: 2 * SECONDS });
await pause(1000);
const over = await paced({ url, post: warmUp.post, perSecond: most * OVER, seconds: SECONDS + SETTLING });
await raykettle.end();

const waits = (of: readonly Fate[], status: number) =>
	of.filter((fate) => fate.status === status).map(({ wait }) => wait);
const settled = over.filter(({ due }) => due >= SETTLING);
const idleWait = percentile(waits(idle, 200), 0.99);
const accepted = waits(settled, 200);
const refused = waits(settled, 503);

console.log(`POST ${warmUp.path}, capacity ${most.toFixed(0)} a second, ${placeWords()}, pool of one`);
const row = (name: string, of: readonly number[]) => [
	name,
	String(of.length),
	...[0.5, 0.9, 0.99].map((share) => percentile(of, share).toFixed(1)),
];
table(
	["wait [ms]", "requests", "p50", "p90", "p99"],
	[row("idle", waits(idle, 200)), row("overload, accepted", accepted), row("overload, refused", refused)],
);
const others = [...idle, ...over].filter(({ status }) => status !== 200 && status !== 503);
const silent = over.filter(({ status, retryAfter }) => status === 503 && !retryAfter);
judge([
	{
		name: "p99 of what is accepted, over idle",
		holds: percentile(accepted, 0.99) <= MOST * idleWait,
		found: `${(percentile(accepted, 0.99) / idleWait).toFixed(2)} (at most ${MOST})`,
	},
	{
		name: "p99 of refusals, over an idle answer",
		holds: percentile(refused, 0.99) <= idleWait,
		found: `${(percentile(refused, 0.99) / idleWait).toFixed(2)} (at most 1)`,
	},
	{
		name: "answers a second, of capacity",
		holds: accepted.length / SECONDS >= 0.7 * most,
		found: `${(accepted.length / SECONDS / most).toFixed(2)} (at least 0.7)`,
	},
	{ name: "refusals without Retry-After", holds: silent.length === 0, found: String(silent.length) },
	{ name: "answers other than 200 and 503", holds: others.length === 0, found: String(others.length) },
]);
