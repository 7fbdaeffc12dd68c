import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { widgetBundle } from "../../sdk/widget/bundle.ts";
import { FILES } from "./files.ts";

const here = fileURLToPath(new URL(".", import.meta.url));
const swagger = dirname(createRequire(import.meta.url).resolve("swagger-ui-dist/package.json"));

/** Writes everything that browsers are served into a folder. */
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
	for (const { name } of FILES)
		writeFileSync(join(out, `${name}.gz`), gzipSync(readFileSync(join(out, name)), { level: 9 }));
}

if (process.argv[1] === fileURLToPath(import.meta.url))
	await buildPages(fileURLToPath(new URL("../../dist/pages/", import.meta.url)));
