/** Mixed traffic for a long time at about half of what the service can do: does it forget what it no longer needs, and does
 *  it answer as it should throughout? Run with `npm run load:soak -- 600` after a build; the number is how long [s].
 *
 *  V8 compiles ever rarer functions for hours, and what it holds about them grows with their code: by less and less, but by
 *  more than a small leak would. So the heap is held to a line in time beside the size of the code. */
import { Agent } from "node:http";
import { asked } from "./asked.ts";
import type { Heap } from "./inside.ts";
import { type Line, line, lineBeside } from "./slope.ts";
import { pinThis, placeWords } from "./spawned.ts";
import { judge, table } from "./table.ts";
import { OVERLOADED, type Sent, traffic } from "./traffic.ts";
import { watched } from "./watched.ts";

const LENGTH = Number(process.argv[2] ?? 600); // [s]
const WARM_UP = 0.25; // of the length
const SAMPLES = 60; // of the heap, over the whole length
const SHARE = 0.5; // of what the service can do
const NOISE = 0.03; // of the heap, that a whole run may add before it counts as growth: some 16 bytes a request
const MEGABYTE = 2 ** 20;

pinThis();
const raykettle = await watched({ POOL_THREADS: "2", ANSWER_MEMORY_MB: "2" }); // a memory that is soon full
const agent = new Agent({ keepAlive: true });
const requests = traffic(20250115);
const statuses = new Map<number, number>();
const wrong: string[] = [];
const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

async function send({ question, expected }: Sent): Promise<number> {
	const { status, text } = await asked(raykettle.url, question, agent);
	statuses.set(status, (statuses.get(status) ?? 0) + 1);
	if (!expected.includes(status))
		wrong.push(`${question.method} ${question.path} was answered ${status}: ${text.slice(0, 200)}`);
	return status;
}

/** Requests a second that are not refused when each of four clients asks again at once. */
async function capacity(seconds: number): Promise<number> {
	const until = performance.now() + seconds * 1000;
	let answered = 0;
	const client = async () => {
		while (performance.now() < until) if ((await send(requests.next().value)) !== OVERLOADED) answered++;
	};
	await Promise.all([client(), client(), client(), client()]);
	return answered / seconds;
}

interface Sample {
	readonly time: number; // [s]
	readonly heap: number; // of all threads [MB]
	readonly code: number; // of all threads [MB]
	readonly resident: number; // [MB]
}

async function sample(begun: number): Promise<Sample | undefined> {
	const told = await raykettle.ask("heaps");
	if (!("heaps" in told) || told.heaps.length !== THREADS) return undefined; // a busy thread did not answer in time
	const sum = (of: (heap: Heap) => number) => told.heaps.reduce((all, heap) => all + of(heap), 0) / MEGABYTE;
	const time = (performance.now() - begun) / 1000;
	return {
		time,
		heap: sum((heap) => heap.bytes),
		code: sum((heap) => heap.code),
		resident: raykettle.resident(),
	};
}

const THREADS = 3; // the main one and the pool's two
await capacity(Math.min(5, LENGTH / 10));
const rate = SHARE * (await capacity(Math.min(10, LENGTH / 10)));
const samples: Sample[] = [];
const begun = performance.now();
const inFlight = new Set<Promise<number>>();
for (let count = 0, sampled = 0; ; ) {
	const passed = (performance.now() - begun) / 1000;
	if (passed >= LENGTH) break;
	for (; count < passed * rate; count++) {
		const one = send(requests.next().value).finally(() => inFlight.delete(one));
		inFlight.add(one);
	}
	if (passed >= (sampled * LENGTH) / SAMPLES) {
		sampled++;
		const found = await sample(begun);
		if (found) samples.push(found);
	}
	await pause(5);
}
await Promise.all(inFlight);
const code = await raykettle.end();
agent.destroy();

const settled = samples.filter(({ time }) => time >= WARM_UP * LENGTH);
const over = (of: keyof Sample) => settled.map((one) => one[of]);
const heap = lineBeside(over("time"), over("heap"), over("code"));
console.log(`${LENGTH} s at ${rate.toFixed(0)} requests a second, ${placeWords()}, pool of two`);
console.log(
	[...statuses]
		.sort(([a], [b]) => a - b)
		.map(([status, count]) => `${status || "left"}: ${count}`)
		.join(", "),
);
const row = (name: string, { mean, slope, error }: Line) => [
	name,
	mean.toFixed(2),
	(slope * 3600).toFixed(2),
	(error * 3600).toFixed(2),
];
table(
	["[MB]", "mean", "growth an hour", "±"],
	[
		row("heap after collection", line(over("time"), over("heap"))),
		row("compiled functions", line(over("time"), over("code"))),
		row("heap beside them", heap),
		row("resident", line(over("time"), over("resident"))),
	],
);
for (const one of wrong.slice(0, 10)) console.log(one);
const growth = (heap.slope - 2 * heap.error) * LENGTH;
judge([
	{ name: "samples of every thread", holds: settled.length >= SAMPLES / 2, found: String(settled.length) },
	{
		name: "heap that a run surely adds",
		holds: growth <= NOISE * heap.mean,
		found: `${Math.max(0, growth).toFixed(3)} MB (at most ${(NOISE * heap.mean).toFixed(3)})`,
	},
	{ name: "answers that should not be", holds: wrong.length === 0, found: String(wrong.length) },
	{ name: "exit code at the end", holds: code === 0, found: String(code) },
]);
