/** How much of a bare node:http server's speed is left with everything on. Run with `npm run load:http` after a build;
 *  `npm run load:http -- 0.6` is content with six tenths of the shares wanted, for a machine that is not quiet. */
import { bundled } from "./bundled.ts";
import { service } from "./service.ts";
import { keepClientAwake, placeWords, spawned } from "./spawned.ts";
import { judge, median, table } from "./table.ts";
import { type Ceiling, ceiling } from "./wrk.ts";

const ENOUGH = Number(process.argv[2] ?? 1); // of the shares wanted
const ROUNDS = 5;
const SECONDS = 3;
const CONNECTIONS = 32;

/** The lightest POST there is, one boiling point by batch, spaced out to a kilobyte as a pretty-printer would. */
const oneKettle = JSON.stringify(
	{ items: [{ operation: "getBoilingPoint", body: { elevationM: 2350 } }] },
	null,
	10,
).padEnd(1024, " ");

interface Job {
	readonly path: string;
	readonly post?: string;
	readonly least: number; // of what the bare server does
}

const jobs: readonly Job[] = [
	{ path: "/health/live", least: 0.6 },
	{ path: "/v1/boiling-point?elevationM=2350", least: 0.4 },
	{ path: "/v1/batch", post: oneKettle, least: 0.35 },
];

keepClientAwake();
const bare = await spawned({ args: [await bundled("bare.ts")], probe: "/" });
const raykettle = await service({}, []);
const yardsticks: Ceiling[][] = jobs.map(() => []);
const found: Ceiling[][] = jobs.map(() => []);
for (let round = -1; round < ROUNDS; round++)
	for (const [i, { path, post }] of jobs.entries()) {
		const seconds = round < 0 ? 1 : SECONDS; // the first round warms up
		const yardstick = await ceiling(bare, "/", post, seconds, CONNECTIONS);
		const own = await ceiling(raykettle, path, post, seconds, CONNECTIONS);
		if (round < 0) continue;
		yardsticks[i]!.push(yardstick);
		found[i]!.push(own);
	}
await Promise.all([bare.end(), raykettle.end()]);

const middle = (of: readonly Ceiling[], what: keyof Ceiling) => median(of.map((one) => one[what]));
const ratio = (i: number, what: keyof Ceiling) =>
	median(found[i]!.map((one, round) => one[what] / yardsticks[i]![round]![what]));
console.log(`${ROUNDS} rounds of ${SECONDS} s, ${placeWords()}, which is kept awake`);
table(
	["", "requests/s", "bare", "ratio", "CPU µs", "bare", "ratio"],
	jobs.map(({ path, post }, i) => [
		`${post === undefined ? "GET" : "POST"} ${path}`,
		middle(found[i]!, "perSecond").toFixed(0),
		middle(yardsticks[i]!, "perSecond").toFixed(0),
		ratio(i, "perSecond").toFixed(2),
		(1e6 / middle(found[i]!, "perCpuSecond")).toFixed(1),
		(1e6 / middle(yardsticks[i]!, "perCpuSecond")).toFixed(1),
		ratio(i, "perCpuSecond").toFixed(2),
	]),
);
judge(
	jobs.map(({ path, least }, i) => ({
		name: `${path}, of what bare node:http does`,
		holds: ratio(i, "perSecond") >= least * ENOUGH,
		found: `${ratio(i, "perSecond").toFixed(2)} (wanted ${least}, enough ${(least * ENOUGH).toFixed(2)})`,
	})),
);
