import { existsSync, readFileSync } from "node:fs";
import type { AppOptions } from "../http/app-options.ts";
import type { Asset } from "../http/static-file.ts";
import { FILES } from "./files.ts";

/** The built pages; each file is read once, on its first request. Without a build the service still answers in JSON. */
export function readPages(folder: URL): Pick<AppOptions, "indexPage" | "assets"> {
	const file = (name: string) => new URL(name, folder);
	if (!existsSync(file("index.html"))) {
		console.warn("The pages are not built; run: npm run pages");
		return { indexPage: undefined };
	}
	const bytes = (name: string) => new Uint8Array(readFileSync(file(name)));
	const assets = FILES.map(({ path, name, type, maxAge }): Asset => {
		return { path, type, maxAge, read: () => ({ bytes: bytes(name), gzipped: bytes(`${name}.gz`) }) };
	});
	return { indexPage: readFileSync(file("index.html"), "utf8"), assets };
}
