import { existsSync, readFileSync } from "node:fs";
import type { Asset } from "../asset.ts";
import type { Config } from "../config.ts";
import { FILES } from "./files.ts";

/** The built pages, read once, plain and packed. Without a build the service answers all the same, in JSON. */
export function readPages(folder: URL): Pick<Config, "indexPage" | "assets"> {
	const file = (name: string) => new URL(name, folder);
	if (!existsSync(file("index.html"))) {
		console.warn("The pages are not built, so there are none: npm run pages");
		return { indexPage: undefined };
	}
	const assets = FILES.map(({ path, name, type, maxAge }): Asset => {
		const bytes = new Uint8Array(readFileSync(file(name)));
		return { path, type, maxAge, bytes, gzipped: new Uint8Array(readFileSync(file(`${name}.gz`))) };
	});
	return { indexPage: readFileSync(file("index.html"), "utf8"), assets };
}
