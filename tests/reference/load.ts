import { readdirSync } from "node:fs";
import type { ReferenceSet } from "./reference.ts";

const ENDING = ".reference.ts";

/** Every set of published values in this folder, in the order of their files' names. */
export async function referenceSets(): Promise<readonly ReferenceSet[]> {
	const topics = readdirSync(import.meta.dirname)
		.filter((name) => name.endsWith(ENDING))
		.map((name) => name.slice(0, -ENDING.length))
		.sort();
	const modules = await Promise.all(
		topics.map(
			async (topic) => (await import(`./${topic}.reference.ts`)) as { sets: readonly ReferenceSet[] },
		),
	);
	return modules.flatMap((module) => module.sets);
}
