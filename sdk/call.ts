import { limited } from "./limited.ts";
import type { CallOptions } from "./method.ts";
import { answerIn, RaykettleProblem } from "./problem.ts";
import { patiently } from "./retry.ts";

/** The second argument of `fetch`, in plain values that every implementation of it takes. */
export interface FetchInit {
	readonly method: string;
	readonly headers: Readonly<Record<string, string>>;
	readonly body?: string;
	/** Aborts when the call times out or the caller aborts it. */
	readonly signal: AbortSignal;
}

export interface RaykettleOptions {
	/** Address of the service, such as https://solar.example.org. */
	readonly baseUrl: string;
	/** Replaces the global fetch, for a proxy, a log or a test. Pass `init` on: it holds the signal that aborts the request. */
	readonly fetch?: (url: string, init: FetchInit) => Promise<Response>;
	/** Key sent as X-Api-Key, where the deployment needs one. */
	readonly apiKey?: string;
	/** Timeout of a complete call in milliseconds, from the first attempt to the end of the response body. 30 000 by default; 0 for no limit. */
	readonly timeoutMs?: number;
	/** Number of retries after a 429 or 503, each after the time that the service states. 2 by default. */
	readonly retries?: number;
}

export type Call = CallOptions & { readonly as?: string };
export type Input = Readonly<Record<string, unknown>>;

/** Calls one operation of the service: resolves to its answer, or rejects with its problem.
 *  @param path  path with its query
 *  @param body  body of a POST; undefined for a GET */
export async function asked(
	options: RaykettleOptions,
	path: string,
	body: Input | undefined,
	call: Call,
): Promise<unknown> {
	const { baseUrl, apiKey, fetch = globalThis.fetch } = options;
	const url = withoutSlash(baseUrl) + path;
	const form = call.as ?? "application/json";
	const timeout = call.timeoutMs ?? options.timeoutMs ?? 30_000;
	const until = timeout > 0 ? Date.now() + timeout : Number.POSITIVE_INFINITY;
	const init = {
		method: body ? "POST" : "GET",
		headers: {
			Accept: form,
			...(body && { "Content-Type": "application/json" }),
			...(apiKey !== undefined && { "X-Api-Key": apiKey }),
			...(call.requestId !== undefined && { "X-Request-Id": call.requestId }),
		},
		...(body && { body: JSON.stringify(body) }),
	};
	const retries = call.retries ?? options.retries ?? 2;
	return limited(call.signal, timeout, async (signal) => {
		// without a Request object: Node forwards the signal of one only until the next garbage collection
		const response = await patiently(() => fetch(url, { ...init, signal }), retries, signal, until);
		const text = await response.text();
		if (!response.ok) throw new RaykettleProblem(response, text);
		return form === "application/json" ? answerIn(response, text) : text;
	});
}

/** An address without trailing slashes. */
function withoutSlash(address: string): string {
	let end = address.length;
	while (address.endsWith("/", end)) end -= 1;
	return address.slice(0, end);
}
