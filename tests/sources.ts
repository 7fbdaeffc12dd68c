import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, normalize } from "node:path";

const ROOT = new URL("..", import.meta.url).pathname;

/** A file of the project, and what it imports: own files by their path from the root, packages by their name. */
export interface Source {
	readonly path: string;
	readonly text: string;
	readonly imports: readonly string[];
}

const IMPORT = /(?:\bfrom|\bimport)\s*\(?\s*"([^"]+)"/g;

/** Every TypeScript file under a folder. */
export function sourcesIn(folder: string): readonly Source[] {
	return readdirSync(join(ROOT, folder), { recursive: true, encoding: "utf8" })
		.filter((name) => name.endsWith(".ts") && !/(^|\/)(dist|node_modules)\//.test(name))
		.map((name) => {
			const path = join(folder, name);
			const text = readFileSync(join(ROOT, path), "utf8");
			const imports = [...text.matchAll(IMPORT)].map(([, target]) =>
				target!.startsWith(".") ? normalize(join(dirname(path), target!)) : target!,
			);
			return { path, text, imports };
		});
}
