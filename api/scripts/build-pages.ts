import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { widgetBundle } from "../../sdk/widget/bundle.ts";
import { createApp } from "../app.ts";
import { FILES } from "../pages/files.ts";

const here = fileURLToPath(new URL("../pages/", import.meta.url));
const swagger = dirname(createRequire(import.meta.url).resolve("swagger-ui-dist/package.json"));

const DAY = "/v1/sun/day?latitude=31.2&longitude=-7.9&elevationM=2350&date=2026-01-15&linkeTurbidity=2.5";

/** The demo page's chart as the service draws it: a file, so that the page can show it where the service requires a key. */
async function chart(): Promise<string> {
	const onFailure = (error: unknown) => {
		throw error;
	};
	const answer = await createApp({ indexPage: undefined, onFailure }).request(DAY, {
		headers: { accept: "image/svg+xml" },
	});
	if (!answer.ok) throw new Error(`${DAY}: ${await answer.text()}`);
	return answer.text();
}

/** Writes all files for browsers into a folder. */
export async function buildPages(out: string): Promise<void> {
	mkdirSync(out, { recursive: true });
	for (const name of ["index.html", "home.css", "docs.html", "docs.css", "cedar-row.json", "icon.svg"])
		copyFileSync(join(here, name), join(out, name));
	for (const name of ["swagger-ui-bundle.js", "swagger-ui.css"])
		copyFileSync(join(swagger, name), join(out, name));
	await build({
		entryPoints: [join(here, "home.ts"), join(here, "docs.ts")],
		...{ bundle: true, minify: true, format: "esm", target: "es2022", charset: "utf8", outdir: out },
	});
	writeFileSync(join(out, "widget.js"), await widgetBundle());
	writeFileSync(join(out, "sun-day.svg"), await chart());
	for (const { name } of FILES)
		writeFileSync(join(out, `${name}.gz`), gzipSync(readFileSync(join(out, name)), { level: 9 }));
}

if (process.argv[1] === fileURLToPath(import.meta.url))
	await buildPages(fileURLToPath(new URL("../../dist/pages/", import.meta.url)));
