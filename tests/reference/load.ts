import { readdirSync } from "node:fs";
import type { ReferenceSet } from "./reference.ts";

const ENDING = ".reference.ts";

/** The sets of one file of this folder. */
export interface ReferenceFile {
	readonly file: string;
	readonly sets: readonly ReferenceSet[];
}

/** Every file of published values in this folder, in the order of their names. */
export async function referenceFiles(): Promise<readonly ReferenceFile[]> {
	const files = readdirSync(import.meta.dirname)
		.filter((name) => name.endsWith(ENDING))
		.sort();
	return Promise.all(
		files.map(async (file) => {
			const topic = file.slice(0, -ENDING.length);
			const module = (await import(`./${topic}.reference.ts`)) as { sets: readonly ReferenceSet[] };
			return { file, sets: module.sets };
		}),
	);
}

/** Every set of published values in this folder. */
export async function referenceSets(): Promise<readonly ReferenceSet[]> {
	return (await referenceFiles()).flatMap(({ sets }) => sets);
}
