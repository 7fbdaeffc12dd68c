import { execFile } from "node:child_process";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { build } from "esbuild";
import { served } from "./served.ts";

const root = fileURLToPath(new URL("../", import.meta.url));

/** What a program of a README prints, run in Node with the SDK of this tree against a service of its own. */
export async function printed(program: string): Promise<string> {
	return served(async (baseUrl) => {
		const { outputFiles } = await build({
			stdin: {
				contents: program.replace("http://127.0.0.1:8787", baseUrl),
				resolveDir: root,
				loader: "ts",
			},
			alias: {
				"@raykettle/sdk/texts": `${root}sdk/texts/sentence.ts`,
				"@raykettle/sdk": `${root}sdk/index.ts`,
			},
			...{ bundle: true, write: false, platform: "node", format: "esm", target: "node20" },
		});
		const script = outputFiles[0]!.text;
		const { stdout } = await promisify(execFile)(process.execPath, ["--input-type=module", "-e", script]);
		return stdout.trim();
	});
}
