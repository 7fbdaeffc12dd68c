import { spawnSync } from "node:child_process";
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { contextOf, copied } from "./context.ts";
import type { Stage } from "./recipe.ts";

const PATIENCE = 300_000; // [ms] for one line

/** Carries out a Containerfile's stages, each in a folder that stands for its file system; the folder of the image's WORKDIR. */
export function replayed(stages: readonly Stage[], context: string, folder: string): string {
	const fromContext = contextOf(context);
	let place = "";
	for (const { name, lines } of stages) {
		const root = join(folder, name);
		for (const { word, rest } of lines) {
			if (word === "WORKDIR") {
				place = join(root, rest);
				mkdirSync(place, { recursive: true });
			} else if (word === "RUN") run(rest, place);
			else if (word === "COPY") {
				const { stage, sources, target } = copyIn(rest);
				const to = target === "./" ? `${place}/` : join(place, target);
				for (const source of sources)
					if (stage === undefined) fromContext(source, to);
					else copied(join(folder, stage, source), to, () => true);
			}
		}
	}
	return place;
}

function copyIn(rest: string) {
	const [, stage] = /^--from=(\w+)/.exec(rest) ?? [];
	const words = rest.split(/\s+/).filter((word) => !word.startsWith("--"));
	return { stage, sources: words.slice(0, -1), target: words.at(-1)! };
}

function run(command: string, place: string): void {
	console.log(`  ${command}`);
	const { status, stderr } = spawnSync("sh", ["-c", command], {
		cwd: place,
		env: plainEnvironment(),
		stdio: ["ignore", "ignore", "pipe"],
		timeout: PATIENCE,
	});
	if (status !== 0) throw new Error(`${command} ends with ${status}: ${stderr}`);
}

/** The environment without what npm tells the script that it runs, which would lead an npm below it astray. */
function plainEnvironment(): NodeJS.ProcessEnv {
	const own = ([name]: [string, unknown]) =>
		!/^npm_(package|lifecycle|command|node|config_local_prefix)/.test(name) && name !== "INIT_CWD";
	return Object.fromEntries(Object.entries(process.env).filter(own));
}
