import { limited } from "./limited.ts";
import type { CallOptions } from "./method.ts";
import { answerIn, RaykettleProblem } from "./problem.ts";
import { patiently } from "./retry.ts";

export interface RaykettleOptions {
	/** Where the service runs, such as https://solar.example.org. */
	readonly baseUrl: string;
	/** Instead of the global fetch: for a proxy, a log or a test. */
	readonly fetch?: (request: Request) => Promise<Response>;
	/** Sent as X-Api-Key, where the deployment asks for one. */
	readonly apiKey?: string;
	/** Milliseconds for a whole call, its retries included; 0 for no limit. 30 000 unless given. */
	readonly timeoutMs?: number;
	/** How often a 429 or 503 is asked again, after the time that the service names. 2 unless given. */
	readonly retries?: number;
}

export type Call = CallOptions & { readonly as?: string };
export type Input = Readonly<Record<string, unknown>>;

/** Asks the service one thing, whatever the operation: resolves to what it answers, or rejects with its problem. */
export async function asked(
	options: RaykettleOptions,
	method: string,
	path: string,
	input: Input,
	call: Call,
): Promise<unknown> {
	const { baseUrl, apiKey, fetch = (request) => globalThis.fetch(request) } = options;
	const isQuery = method === "get";
	const url = baseUrl.replace(/\/+$/, "") + (isQuery ? withQuery(path, input) : path);
	const form = call.as ?? "application/json";
	const timeout = call.timeoutMs ?? options.timeoutMs ?? 30_000;
	const until = timeout > 0 ? Date.now() + timeout : Number.POSITIVE_INFINITY;
	const request = (signal: AbortSignal) =>
		new Request(url, {
			method,
			signal,
			headers: {
				Accept: form,
				...(!isQuery && { "Content-Type": "application/json" }),
				...(apiKey !== undefined && { "X-Api-Key": apiKey }),
				...(call.requestId !== undefined && { "X-Request-Id": call.requestId }),
			},
			...(!isQuery && { body: JSON.stringify(input) }),
		});
	const retries = call.retries ?? options.retries ?? 2;
	return limited(call.signal, timeout, async (signal) => {
		const response = await patiently(() => fetch(request(signal)), retries, signal, until);
		const text = await response.text();
		if (!response.ok) throw new RaykettleProblem(response, text);
		return form === "application/json" ? answerIn(response, text) : text;
	});
}

/** A path with its `{parameters}` filled in, the rest of the input behind it as a query; a list repeats its name. */
function withQuery(path: string, input: Input): string {
	const query = new URLSearchParams();
	const filled = path.replace(/\{(\w+)\}/g, (_, name: string) => encodeURIComponent(String(input[name])));
	for (const [name, value] of Object.entries(input))
		if (value !== undefined && !path.includes(`{${name}}`))
			for (const one of Array.isArray(value) ? value : [value]) query.append(name, String(one));
	return query.size > 0 ? `${filled}?${query}` : filled;
}
