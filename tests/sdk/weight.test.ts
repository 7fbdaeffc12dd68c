import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { expect, it } from "vitest";
import { widgetBundle } from "../../sdk/widget/bundle.ts";

// From the sources; package.slow.test.ts holds the packed SDK to the same.

async function clientBundle(): Promise<string> {
	const { outputFiles } = await build({
		entryPoints: [fileURLToPath(new URL("../../sdk/index.ts", import.meta.url))],
		...{ bundle: true, minify: true, write: false, format: "esm", target: "es2022", platform: "browser" },
	});
	return outputFiles[0]!.text;
}

it.each([
	["client", 5000, clientBundle],
	["widget", 26_000, widgetBundle],
])("the %s weighs at most %i bytes in a browser, and asks for no other module", async (_, most, bundle) => {
	const text = await bundle();
	expect(gzipSync(text, { level: 9 }).length).toBeLessThanOrEqual(most);
	expect(text).not.toMatch(/^import|\bimport\(/m);
});
