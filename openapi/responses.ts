import type { Operation } from "../api/operations/operation.ts";
import { GUARD_REFUSALS, isGuarded } from "./security.ts";

/** Every header that the contract tells of, once for all operations. */
export const HEADERS = {
	RequestId: {
		description: "The caller's own id where one was sent, else a new one. Quote it in a report.",
		schema: { type: "string" as const },
	},
	RetryAfter: {
		description: "Seconds until another try makes sense.",
		schema: { type: "integer" as const, minimum: 0 },
	},
	RateLimit: {
		description:
			"What is left of each quota, where the deployment limits rates: `r` requests within `t` seconds (draft-ietf-httpapi-ratelimit-headers-11).",
		schema: { type: "string" as const },
		example: '"default";r=599;t=60',
	},
	RateLimitPolicy: {
		description:
			"Each quota, where the deployment limits rates: `q` requests in `w` seconds; `default` is the deployment's, `key` the key's own.",
		schema: { type: "string" as const },
		example: '"default";q=600;w=60',
	},
	Challenge: {
		description: "What is asked for: a key, and the header to send it in (RFC 9110, section 11.6.1).",
		schema: { type: "string" as const },
		example: 'ApiKey realm="raykettle", header="X-Api-Key"',
	},
};

const ref = (name: keyof typeof HEADERS) => ({ $ref: `#/components/headers/${name}` as const });

/** Headers that every answer carries. */
const SHARED_HEADERS = { "X-Request-Id": ref("RequestId") };
const RATE_HEADERS = { RateLimit: ref("RateLimit"), "RateLimit-Policy": ref("RateLimitPolicy") };
const RETRY_HEADER = { "Retry-After": ref("RetryAfter") };

/** Headers of an answer of what stands at a path. */
export const headersOf = (path: string) => ({ ...SHARED_HEADERS, ...(isGuarded(path) && RATE_HEADERS) });

const FAULTS = {
	400: {
		name: "InvalidRequest",
		words: "The request breaks the contract; `errors` names every fault.",
		own: {},
	},
	401: {
		name: "Unauthorized",
		words: "The key is not known, or the deployment asks for one and none came.",
		own: { "WWW-Authenticate": ref("Challenge") },
	},
	403: {
		name: "Forbidden",
		words:
			"The key may not be used there: a publishable one from another origin than its own, or a secret one from a web page.",
		own: {},
	},
	404: { name: "NotFound", words: "There is nothing of that name.", own: {} },
	406: { name: "NotAcceptable", words: "The Accept header rules out every form of the answer.", own: {} },
	408: { name: "RequestTimeout", words: "The request did not arrive whole in time.", own: {} },
	413: { name: "PayloadTooLarge", words: "The body is larger than `/v1/meta` allows.", own: {} },
	415: { name: "UnsupportedMediaType", words: "The body is not plain JSON.", own: {} },
	422: {
		name: "Unprocessable",
		words: "The request keeps the contract but is contradictory, impossible or outside a model.",
		own: {},
	},
	429: {
		name: "TooManyRequests",
		words: "The caller has used up a quota; `Retry-After` tells when it is whole again.",
		own: RETRY_HEADER,
	},
	500: { name: "Internal", words: "The service failed; nothing of its inside is told.", own: {} },
	503: { name: "Overloaded", words: "The service is busy, or not fit to answer.", own: RETRY_HEADER },
} as const;

/** The problem responses, once for all operations. */
export const FAULT_RESPONSES = Object.fromEntries(
	Object.values(FAULTS).map(({ name, words, own }) => [
		name,
		{
			description: words,
			headers: { ...SHARED_HEADERS, ...RATE_HEADERS, ...own },
			content: { "application/problem+json": { schema: { $ref: "#/components/schemas/Problem" } } },
		},
	]),
);

/** What besides 200 an operation can answer. */
export function otherResponses({ method, path, maxAge, refusals = [] }: Answering) {
	const usual =
		method === "post" ? ([400, 406, 408, 413, 415, 422, 500] as const) : ([400, 406, 500] as const);
	const statuses = [...new Set([...usual, ...refusals, ...(isGuarded(path) ? GUARD_REFUSALS : [])])];
	return {
		...(maxAge > 0 && {
			304: { description: "The caller holds this answer already.", headers: headersOf(path) },
		}),
		...Object.fromEntries(
			statuses
				.toSorted((a, b) => a - b)
				.map((status) => [status, { $ref: `#/components/responses/${FAULTS[status].name}` }]),
		),
	};
}

type Answering = Pick<Operation, "method" | "path" | "maxAge" | "refusals">;
