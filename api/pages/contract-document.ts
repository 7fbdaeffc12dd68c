import type { Document } from "../http/document.ts";
import { cacheControl } from "../http/reply.ts";
import { sendText, type Tagged, taggedText } from "../http/send.ts";

let text: Promise<Tagged> | undefined; // read on the first request: it is longer than the rest of the service

/** The bytes of the committed file. */
async function committed(): Promise<Tagged> {
	const { default: contract } = await import("../../openapi/openapi.json");
	return taggedText(`${JSON.stringify(contract, undefined, "\t")}\n`);
}

/** The contract as committed, not rebuilt: the service sends what was reviewed. */
export const contract: Document = {
	path: "/openapi.json",
	operationId: "getContract",
	summary: "This contract (OpenAPI 3.1)",
	mediaTypes: ["application/json"],
	respond: async (c, { pack }) => {
		text ??= committed();
		return sendText(
			c,
			await text,
			cacheControl(3600, "public"),
			{ "Content-Type": "application/json" },
			pack,
		);
	},
};
