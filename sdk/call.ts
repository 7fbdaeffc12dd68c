import { limited } from "./limited.ts";
import type { CallOptions } from "./method.ts";
import { answerIn, RaykettleProblem } from "./problem.ts";
import { patiently } from "./retry.ts";

/** The second argument of `fetch`, in plain values that every implementation of it takes. */
export interface FetchInit {
	readonly method: string;
	readonly headers: Readonly<Record<string, string>>;
	readonly body?: string;
	/** Fires when the call's time is up, or its caller ends it. */
	readonly signal: AbortSignal;
}

export interface RaykettleOptions {
	/** Where the service runs, such as https://solar.example.org. */
	readonly baseUrl: string;
	/** Instead of the global fetch: for a proxy, a log or a test. Pass `init` on: it holds the signal that ends the request. */
	readonly fetch?: (url: string, init: FetchInit) => Promise<Response>;
	/** Sent as X-Api-Key, where the deployment asks for one. */
	readonly apiKey?: string;
	/** Milliseconds for a whole call, from the first try to the end of the answer's body; 0 for no limit. 30 000 unless given. */
	readonly timeoutMs?: number;
	/** How often a 429 or 503 is asked again, after the time that the service names. 2 unless given. */
	readonly retries?: number;
}

export type Call = CallOptions & { readonly as?: string };
export type Input = Readonly<Record<string, unknown>>;

/** Asks the service one thing, whatever the operation: resolves to what it answers, or rejects with its problem.
 *  @param path  with its query
 *  @param body  of a POST; undefined for a GET */
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
		// no Request in between: Node passes on the signal of one only until the next garbage collection
		const response = await patiently(() => fetch(url, { ...init, signal }), retries, signal, until);
		const text = await response.text();
		if (!response.ok) throw new RaykettleProblem(response, text);
		return form === "application/json" ? answerIn(response, text) : text;
	});
}

/** An address without the slashes that it may end in. */
function withoutSlash(address: string): string {
	let end = address.length;
	while (address.endsWith("/", end)) end -= 1;
	return address.slice(0, end);
}
