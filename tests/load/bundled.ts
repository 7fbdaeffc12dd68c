import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { build } from "esbuild";

/** A folder for what a run makes, gone when the run is over. */
const folder = mkdtempSync(join(tmpdir(), "raykettle-load-"));
process.once("exit", () => rmSync(folder, { recursive: true, force: true }));

/** A program of this folder as one file of plain JavaScript, as the service itself is delivered.
 *  @param name  its file here, such as bare.ts */
export async function bundled(name: string): Promise<string> {
	const outfile = join(folder, `${basename(name, ".ts")}.mjs`);
	await build({
		entryPoints: [new URL(name, import.meta.url).pathname],
		outfile,
		bundle: true,
		platform: "node",
		format: "esm",
		target: "node20",
		logLevel: "error",
		banner: { js: "import{createRequire}from'node:module';const require=createRequire(import.meta.url);" },
	});
	return outfile;
}

/** Where a run may put a file of its own. */
export const scratch = (name: string): string => join(folder, name);
