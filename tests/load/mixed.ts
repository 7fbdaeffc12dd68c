/** How long light requests wait while heavy ones are worked out. Run with `npm run load:mixed` after a build. */
import { boilingPoint, sensitivity } from "./bodies.ts";
import { clients } from "./clients.ts";
import { paced } from "./paced.ts";
import { service } from "./service.ts";
import { pinThis, placeWords } from "./spawned.ts";
import { judge, median, percentile, table } from "./table.ts";

const ROUNDS = 5;
const SECONDS = 4;
const RATE = 200; // [1/s] light requests
const HEAVY = 8; // in flight
const THREADS = 4; // of the pool: as many answers are worked out at a time, and as many may wait
const MOST = 5; // times as long may the slowest hundredth wait

pinThis();
const raykettle = await service({ POOL_THREADS: String(THREADS) }, []);
const waits = async () => {
	const fates = await paced({ url: raykettle.url + boilingPoint.path, perSecond: RATE, seconds: SECONDS });
	const lost = fates.filter(({ status }) => status !== 200).length;
	if (lost > 0) throw new Error(`${lost} of ${fates.length} light requests were not answered`);
	return fates.map(({ wait }) => wait);
};

const rounds: { readonly alone: readonly number[]; readonly loaded: readonly number[] }[] = [];
const beside: number[] = [];
await waits(); // warms up
for (let round = 0; round < ROUNDS; round++) {
	const alone = await waits();
	const heavy = clients(raykettle.url, sensitivity, HEAVY);
	await new Promise((resolve) => setTimeout(resolve, 1000));
	const loaded = await waits();
	beside.push((await heavy.leave()).inFlight);
	rounds.push({ alone, loaded });
}
await raykettle.end();

const middle = (which: "alone" | "loaded", share: number) =>
	median(rounds.map((round) => percentile(round[which], share)));
console.log(
	`${RATE} GET ${boilingPoint.path} a second, ${ROUNDS} rounds of ${SECONDS} s, ${placeWords()}, pool of ${THREADS}`,
);
console.log(`heavy requests in flight: ${median(beside).toFixed(1)} of ${HEAVY} asked`);
table(
	["wait [ms]", "p50", "p90", "p99"],
	(["alone", "loaded"] as const).map((which) => [
		which === "alone" ? "alone" : "beside heavy requests",
		...[0.5, 0.9, 0.99].map((share) => middle(which, share).toFixed(2)),
	]),
);
const ratio = median(rounds.map(({ alone, loaded }) => percentile(loaded, 0.99) / percentile(alone, 0.99)));
judge([
	{
		name: "p99 of light requests, beside heavy ones over alone",
		holds: ratio <= MOST,
		found: `${ratio.toFixed(2)} (at most ${MOST})`,
	},
]);
