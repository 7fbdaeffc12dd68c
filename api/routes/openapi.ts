import contractDocument from "../../openapi/openapi.json";
import type { Document } from "../document.ts";
import { taggedText, told } from "../told.ts";

const text = taggedText(`${JSON.stringify(contractDocument, undefined, "\t")}\n`); // the bytes of the committed file

/** The contract as committed, not rebuilt: what was reviewed is what is served. */
export const contract: Document = {
	path: "/openapi.json",
	operationId: "getContract",
	summary: "This contract (OpenAPI 3.1)",
	mediaTypes: ["application/json"],
	say: (c, { pack }) => told(c, text, 3600, { "Content-Type": "application/json" }, pack),
};
