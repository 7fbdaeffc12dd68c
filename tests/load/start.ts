/** How soon after its start the service answers, against a bare hono server started alike, and what it holds when idle.
 *  Run with `npm run load:start` after a build; `-- 1.25` allows a quarter more, for a machine that is not quiet. */
import { warmUp } from "./bodies.ts";
import { bundled } from "./bundled.ts";
import { clients } from "./clients.ts";
import { service } from "./service.ts";
import { pinThis, placeWords, spawned } from "./spawned.ts";
import { judge, median, table } from "./table.ts";

const ALLOWED = Number(process.argv[2] ?? 1); // times the bounds
const STARTS = 11;
const MOST = 2.5; // times as long as the bare one
const POOL = 2;
const MEMORY = 150; // [MB]

pinThis();
const hello = await bundled("hello.ts");

/** From the start of a process to its first answer [ms]. */
async function coldStart(start: () => Promise<{ end(): Promise<unknown> }>): Promise<number> {
	const begun = performance.now();
	const server = await start();
	const took = performance.now() - begun;
	await server.end();
	return took;
}

const bare: number[] = [];
const own: number[] = [];
for (let round = 0; round < STARTS; round++) {
	bare.push(await coldStart(() => spawned({ args: [hello], probe: "/" })));
	own.push(await coldStart(() => service({ POOL_THREADS: String(POOL) }, [])));
}

const raykettle = await service({ POOL_THREADS: String(POOL) }, []);
const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));
await pause(1000);
const fresh = raykettle.resident();
const asking = clients(raykettle.url, warmUp, POOL); // both threads are busy, so both have answered
await pause(1000);
const { statuses } = await asking.leave();
await pause(5000);
const idle = raykettle.resident();
await raykettle.end();

console.log(`medians of ${STARTS} starts in turn, ${placeWords()}`);
table(
	["", "first answer [ms]"],
	[
		["hono alone", median(bare).toFixed(0)],
		["service", median(own).toFixed(0)],
	],
);
console.log(
	`resident ${fresh.toFixed(0)} MB before the first question, ${idle.toFixed(0)} MB after ${statuses.get(200) ?? 0} warm-ups`,
);
const ratio = median(own.map((took, round) => took / bare[round]!));
judge([
	{
		name: "first answer, over hono alone",
		holds: ratio <= MOST * ALLOWED,
		found: `${ratio.toFixed(2)} (wanted ${MOST}, at most ${(MOST * ALLOWED).toFixed(2)})`,
	},
	{
		name: `memory when idle, pool of ${POOL}`,
		holds: (statuses.get(200) ?? 0) >= POOL && idle <= MEMORY * ALLOWED,
		found: `${idle.toFixed(0)} MB (wanted ${MEMORY}, at most ${(MEMORY * ALLOWED).toFixed(0)})`,
	},
]);
