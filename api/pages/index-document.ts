import { VERSIONS } from "../config/limits.ts";
import type { AppOptions } from "../http/app-options.ts";
import type { Document } from "../http/document.ts";
import { preferredType } from "../http/negotiate.ts";
import { cacheControl } from "../http/reply.ts";
import { sendText, taggedText } from "../http/send.ts";
import { fileHeaders } from "../http/static-file.ts";
import { ProblemError } from "../problem/problem.ts";

const LINKS = {
	name: "Raykettle",
	description: "Sizes solar water heaters driven by a tracking dish.",
	version: VERSIONS.service,
	contract: "/openapi.json",
	meta: "/v1/meta",
	health: ["/health/live", "/health/ready"],
};

/** Links for programs; links to browser files only where those exist. */
function index({ assets = [] }: AppOptions): string {
	const there = (path: string) => assets.some((asset) => asset.path === path);
	return JSON.stringify({
		...LINKS,
		...(there("/docs") && { docs: "/docs" }),
		...(there("/widget.js") && { widget: "/widget.js" }),
	});
}

/** The entry point: a page for people, links for programs. */
export const home: Document = {
	path: "/",
	operationId: "getIndex",
	summary: "Where to begin",
	mediaTypes: ["application/json", "text/html"],
	respond: (c, config) => {
		const { indexPage, pack } = config;
		const offered =
			indexPage === undefined
				? (["application/json"] as const)
				: (["application/json", "text/html"] as const);
		const type = preferredType(c.req.header("accept"), offered);
		if (type === undefined)
			throw new ProblemError("not-acceptable", "The index is available as application/json and text/html");
		return type === "application/json"
			? sendText(
					c,
					taggedText(index(config)),
					cacheControl(3600, "public"),
					{ Vary: "Accept", "Content-Type": type },
					pack,
				)
			: sendText(
					c,
					taggedText(indexPage ?? ""),
					cacheControl(300, "public"),
					{ Vary: "Accept", ...fileHeaders("text/html; charset=utf-8") },
					pack,
				);
	},
};
