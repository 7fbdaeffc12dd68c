import { acceptable } from "../accept.ts";
import { VERSIONS } from "../config.ts";
import type { Document } from "../document.ts";
import { ProblemError } from "../problem.ts";
import { fixedText } from "../respond.ts";

const index = JSON.stringify({
	name: "Raykettle",
	description: "Sizes solar water heaters driven by a tracking dish.",
	version: VERSIONS.service,
	contract: "/openapi.json",
	meta: "/v1/meta",
	health: ["/health/live", "/health/ready"],
});

/** Where to begin: a page for people, links for programs. */
export const home: Document = {
	path: "/",
	operationId: "getIndex",
	summary: "Where to begin",
	mediaTypes: ["application/json", "text/html"],
	say: (c, { indexPage }) => {
		const type = acceptable(
			c.req.header("accept"),
			indexPage === undefined ? ["application/json"] : ["application/json", "text/html"],
		);
		if (type === undefined)
			throw new ProblemError("not-acceptable", "The index is there as application/json and text/html");
		return type === "application/json"
			? fixedText(c, index, type, 3600)
			: fixedText(c, indexPage ?? "", "text/html; charset=utf-8", 3600);
	},
};
