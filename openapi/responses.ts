import type { Operation } from "../api/operation.ts";

/** Headers that every answer carries. */
export const SHARED_HEADERS = {
	"X-Request-Id": {
		description: "The caller's own id where one was sent, else a new one. Quote it in a report.",
		schema: { type: "string" as const },
	},
};

const RETRY_HEADER = {
	"Retry-After": {
		description: "Seconds until another try makes sense.",
		schema: { type: "integer" as const },
	},
};

const FAULTS = {
	400: { name: "InvalidRequest", words: "The request breaks the contract; `errors` names every fault." },
	404: { name: "NotFound", words: "There is nothing of that name." },
	406: { name: "NotAcceptable", words: "The Accept header rules out every form of the answer." },
	408: { name: "RequestTimeout", words: "The request did not arrive whole in time." },
	413: { name: "PayloadTooLarge", words: "The body is larger than `/v1/meta` allows." },
	415: { name: "UnsupportedMediaType", words: "The body is not plain JSON." },
	422: {
		name: "Unprocessable",
		words: "The request keeps the contract but is contradictory, impossible or outside a model.",
	},
	500: { name: "Internal", words: "The service failed; nothing of its inside is told." },
	503: { name: "Overloaded", words: "The service is busy, or not fit to answer." },
} as const;

/** The problem responses, once for all operations. */
export const FAULT_RESPONSES = Object.fromEntries(
	Object.entries(FAULTS).map(([status, { name, words }]) => [
		name,
		{
			description: words,
			headers: { ...SHARED_HEADERS, ...(status === "503" && RETRY_HEADER) },
			content: { "application/problem+json": { schema: { $ref: "#/components/schemas/Problem" } } },
		},
	]),
);

const NOT_MODIFIED = { description: "The caller holds this answer already.", headers: SHARED_HEADERS };

/** What besides 200 an operation can answer. */
export function otherResponses({ method, maxAge, refusals = [] }: Answering) {
	const usual =
		method === "post" ? ([400, 406, 408, 413, 415, 422, 500] as const) : ([400, 406, 500] as const);
	const statuses = [...usual, ...refusals].toSorted((a, b) => a - b);
	return {
		...(maxAge > 0 && { 304: NOT_MODIFIED }),
		...Object.fromEntries(
			statuses.map((status) => [status, { $ref: `#/components/responses/${FAULTS[status].name}` }]),
		),
	};
}

type Answering = Pick<Operation, "method" | "maxAge" | "refusals">;
