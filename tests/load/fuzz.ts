/** 20 000 seeded requests over every operation: nothing but answers and problems may come back, and memory must not grow. */
import { fuzzed } from "../fuzz.ts";

const COUNT = Number(process.argv[2] ?? 20_000);
const SEED = Number(process.argv[3] ?? 2026);
const MOST_GROWTH = 64; // [MB] of heap between a tenth of the way and the end

const statuses = new Map<string, number>();
let faults = 0;
let early = 0;
let done = 0;
for await (const { operationId, status, sent, fault } of fuzzed(SEED, COUNT)) {
	const key = `${operationId} ${status}`;
	statuses.set(key, (statuses.get(key) ?? 0) + 1);
	if (fault && ++faults <= 10) console.error(`${operationId}: ${fault}\n  ${sent.slice(0, 2000)}`);
	if (++done === Math.floor(COUNT / 10)) early = process.memoryUsage().heapUsed;
}
globalThis.gc?.();
const growth = (process.memoryUsage().heapUsed - early) / 1e6;
for (const [key, count] of [...statuses].sort()) console.log(`${key}: ${count}`);
console.log(`heap grew by ${growth.toFixed(0)} MB`);
console.log(`${done - faults} passed, ${faults} failed`);
if (faults > 0 || growth > MOST_GROWTH) process.exitCode = 1;
