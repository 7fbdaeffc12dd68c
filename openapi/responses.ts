import type { Operation } from "../api/operations/operation.ts";
import { GUARD_REFUSALS, isGuarded } from "./security.ts";

/** Every response header of the contract, shared by all operations. */
export const HEADERS = {
	RequestId: {
		description:
			"Id of the request: the client's own id if it sent one, else a new one. Quote it in reports.",
		schema: { type: "string" as const },
	},
	RetryAfter: {
		description: "Seconds until the client should try again.",
		schema: { type: "integer" as const, minimum: 0 },
	},
	RateLimit: {
		description:
			"Rest of each quota, where the deployment limits rates: `r` requests within `t` seconds (draft-ietf-httpapi-ratelimit-headers-11).",
		schema: { type: "string" as const },
		example: '"default";r=599;t=60',
	},
	RateLimitPolicy: {
		description:
			"Each quota, where the deployment limits rates: `q` requests in `w` seconds. `default` is the quota of the deployment, `key` that of the key.",
		schema: { type: "string" as const },
		example: '"default";q=600;w=60',
	},
	Challenge: {
		description: "Required authentication: a key, and the header for it (RFC 9110, section 11.6.1).",
		schema: { type: "string" as const },
		example: 'ApiKey realm="raykettle", header="X-Api-Key"',
	},
};

const ref = (name: keyof typeof HEADERS) => ({ $ref: `#/components/headers/${name}` as const });

/** Headers of every response. */
const SHARED_HEADERS = { "X-Request-Id": ref("RequestId") };
const RATE_HEADERS = { RateLimit: ref("RateLimit"), "RateLimit-Policy": ref("RateLimitPolicy") };
const RETRY_HEADER = { "Retry-After": ref("RetryAfter") };

/** Headers of the responses of a path. */
export const headersOf = (path: string) => ({ ...SHARED_HEADERS, ...(isGuarded(path) && RATE_HEADERS) });

const FAULTS = {
	400: {
		name: "InvalidRequest",
		words: "The request breaks the contract. `errors` lists every fault.",
		own: {},
	},
	401: {
		name: "Unauthorized",
		words: "The key is unknown, or the deployment requires a key and none was sent.",
		own: { "WWW-Authenticate": ref("Challenge") },
	},
	403: {
		name: "Forbidden",
		words:
			"The key is not allowed here: a publishable key outside its origins, or a secret key from a web page.",
		own: {},
	},
	404: { name: "NotFound", words: "Nothing exists under this name.", own: {} },
	406: { name: "NotAcceptable", words: "The `Accept` header excludes every available media type.", own: {} },
	408: { name: "RequestTimeout", words: "The request did not arrive completely in time.", own: {} },
	413: { name: "PayloadTooLarge", words: "The body exceeds the limit in `/v1/meta`.", own: {} },
	415: { name: "UnsupportedMediaType", words: "The body is not uncompressed JSON.", own: {} },
	422: {
		name: "Unprocessable",
		words: "The request is valid but contradictory, physically impossible, outside a model or too expensive.",
		own: {},
	},
	429: {
		name: "TooManyRequests",
		words: "The client has used up a quota. `Retry-After` is the time until it is restored.",
		own: RETRY_HEADER,
	},
	500: { name: "Internal", words: "Internal server error, without details.", own: {} },
	503: { name: "Overloaded", words: "The service is overloaded or not ready.", own: RETRY_HEADER },
} as const;

/** Problem responses, shared by all operations. */
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

/** Responses of an operation besides 200. */
export function otherResponses({ method, path, maxAge, refusals = [] }: Responder) {
	const usual =
		method === "post" ? ([400, 406, 408, 413, 415, 422, 500] as const) : ([400, 406, 500] as const);
	const statuses = [...new Set([...usual, ...refusals, ...(isGuarded(path) ? GUARD_REFUSALS : [])])];
	return {
		...(maxAge > 0 && {
			304: { description: "The client's cached response is current.", headers: headersOf(path) },
		}),
		...Object.fromEntries(
			statuses
				.toSorted((a, b) => a - b)
				.map((status) => [status, { $ref: `#/components/responses/${FAULTS[status].name}` }]),
		),
	};
}

type Responder = Pick<Operation, "method" | "path" | "maxAge" | "refusals">;
