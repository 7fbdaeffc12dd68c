/** How often plants drawn at random from the full model fall between low and high: a thousand for each of three seeds, against
 *  the share claimed. Draws are independent, and no part of the propagation is used to make them. A day to a process, as many at
 *  once as there are cores. Fails where a share is off, where a process ends without an answer, or where the time runs out. */
import { type ChildProcess, fork } from "node:child_process";
import { once } from "node:events";
import { availableParallelism } from "node:os";
import { fileURLToPath } from "node:url";
import { type Coverage, days } from "./ranges/days.ts";

const PLANTS = Number(process.argv[2] ?? 1000);
const PATIENCE = 1200; // [s] for all of it
const CHILD = fileURLToPath(new URL("ranges/child.ts", import.meta.url));

if (!(Number.isInteger(PLANTS) && PLANTS > 0)) throw new Error("say how many plants, or nothing");

const children = new Set<ChildProcess>();
const expiry = setTimeout(() => fail(`not done in ${PATIENCE} s`), PATIENCE * 1000);
const results: (readonly Coverage[])[] = [];
const waiting = days.keys();

/** Takes one day after another until none waits. */
async function worked(): Promise<void> {
	for (const day of waiting) results[day] = await tried(day);
}

async function tried(day: number): Promise<readonly Coverage[]> {
	const child = fork(CHILD, [String(day), String(PLANTS)]);
	children.add(child);
	let found: readonly Coverage[] | undefined;
	child.once("message", (message) => {
		found = message as readonly Coverage[]; // what child.ts sends
	});
	await once(child, "exit");
	children.delete(child);
	return found ?? fail(`${days[day]!.name}: its process ended without an answer`);
}

function fail(why: string): never {
	console.error(why);
	for (const child of children) child.kill();
	process.exit(1);
}

const spoken = ({ day, answer, method, marches, claimed, inside, asClaimed }: Coverage) =>
	`${asClaimed ? "ok  " : "OFF "} ${day}: ${answer} by ${method}, ${marches} marches: claimed ${claimed.toFixed(2)}, inside ${inside.map((share) => share.toFixed(3)).join(", ")}`;

const start = performance.now();
await Promise.all(Array.from({ length: Math.min(availableParallelism(), days.length) }, worked));
clearTimeout(expiry);

const all = results.flat();
const off = all.filter(({ asClaimed }) => !asClaimed);
for (const found of all) console.log(spoken(found));
console.log(
	`${all.length - off.length} of ${all.length} ranges hold ${PLANTS} plants of each seed as often as they claim, in ${((performance.now() - start) / 1000).toFixed(0)} s`,
);
if (off.length > 0) process.exitCode = 1;
