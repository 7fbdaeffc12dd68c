import { VERSIONS } from "../config/limits.ts";
import type { AppOptions } from "../http/app-options.ts";
import type { Document } from "../http/document.ts";
import { acceptable } from "../http/negotiate.ts";
import { keeping } from "../http/reply.ts";
import { taggedText, told } from "../http/send.ts";
import { typed } from "../http/static-file.ts";
import { ProblemError } from "../problem/problem.ts";

const LINKS = {
	name: "Raykettle",
	description: "Sizes solar water heaters driven by a tracking dish.",
	version: VERSIONS.service,
	contract: "/openapi.json",
	meta: "/v1/meta",
	health: ["/health/live", "/health/ready"],
};

/** Links for programs; those to files for browsers only where there are such files. */
function index({ assets = [] }: AppOptions): string {
	const there = (path: string) => assets.some((asset) => asset.path === path);
	return JSON.stringify({
		...LINKS,
		...(there("/docs") && { docs: "/docs" }),
		...(there("/widget.js") && { widget: "/widget.js" }),
	});
}

/** Where to begin: a page for people, links for programs. */
export const home: Document = {
	path: "/",
	operationId: "getIndex",
	summary: "Where to begin",
	mediaTypes: ["application/json", "text/html"],
	say: (c, config) => {
		const { indexPage, pack } = config;
		const offered =
			indexPage === undefined
				? (["application/json"] as const)
				: (["application/json", "text/html"] as const);
		const type = acceptable(c.req.header("accept"), offered);
		if (type === undefined)
			throw new ProblemError("not-acceptable", "The index is there as application/json and text/html");
		return type === "application/json"
			? told(
					c,
					taggedText(index(config)),
					keeping(3600, "public"),
					{ Vary: "Accept", "Content-Type": type },
					pack,
				)
			: told(
					c,
					taggedText(indexPage ?? ""),
					keeping(300, "public"),
					{ Vary: "Accept", ...typed("text/html; charset=utf-8") },
					pack,
				);
	},
};
