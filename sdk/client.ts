import createClient, { type ClientOptions } from "openapi-fetch";
import { RaykettleProblem } from "./problem.ts";
import type { operations, paths } from "./schema.d.ts";

export interface RaykettleOptions {
	/** Where the service runs, such as https://solar.example.org. */
	readonly baseUrl: string;
	/** Instead of the global fetch: for retries, a proxy or a test. */
	readonly fetch?: NonNullable<ClientOptions["fetch"]>;
	/** Sent as X-Api-Key, where the deployment asks for one. */
	readonly apiKey?: string;
}

/** What one call may carry besides its question. */
export interface CallOptions {
	readonly signal?: AbortSignal;
	/** Your own id for the request; the answer and the service's log repeat it. */
	readonly requestId?: string;
}

type Name = keyof operations;
/** What an operation is asked. */
export type Query<N extends Name> = NonNullable<operations[N]["parameters"]["query"]>;
type Posting = { [N in Name]: operations[N] extends { requestBody: object } ? N : never }[Name];
/** What an operation is sent. */
export type Body<N extends Posting> = operations[N]["requestBody"]["content"]["application/json"];
/** What an operation answers. Read from the contract itself: the fetch library's own view garbles readonly arrays. */
export type Answer<N extends Name> = operations[N]["responses"][200]["content"]["application/json" &
	keyof operations[N]["responses"][200]["content"]];

/** A client of the service: one method for each operation, each resolving to its answer or throwing a RaykettleProblem. */
export function createRaykettle({ baseUrl, fetch, apiKey }: RaykettleOptions) {
	const http = createClient<paths>({
		baseUrl: baseUrl.replace(/\/+$/, ""),
		...(fetch && { fetch }),
		headers: { Accept: "application/json", ...(apiKey !== undefined && { "X-Api-Key": apiKey }) },
	});
	return {
		/** Where the sun stands, at one instant or many. */
		sunPosition: (query: Query<"getSunPosition">, call?: CallOptions) =>
			answer<"getSunPosition">(http.GET("/v1/sun/position", { params: { query }, ...sent(call) })),
		/** One clear day of sun, and the best fixed tilts. */
		sunDay: (query: Query<"getSunDay">, call?: CallOptions) =>
			answer<"getSunDay">(http.GET("/v1/sun/day", { params: { query }, ...sent(call) })),
		/** Elevation, air pressure and boiling point, from exactly one of them. */
		boilingPoint: (query: Query<"getBoilingPoint">, call?: CallOptions) =>
			answer<"getBoilingPoint">(http.GET("/v1/boiling-point", { params: { query }, ...sent(call) })),
		/** One day of a plant: when the tank is hot, how many litres it gives, and what to be careful of. */
		warmUp: (body: Body<"warmUpTank">, call?: CallOptions) =>
			answer<"warmUpTank">(http.POST("/v1/tank/warm-up", { body, ...sent(call) })),
		/** Versions, and every limit in force. */
		meta: (call?: CallOptions) => answer<"getMeta">(http.GET("/v1/meta", sent(call))),
		/** Whether the process answers. */
		live: (call?: CallOptions) => answer<"getLiveness">(http.GET("/health/live", sent(call))),
		/** Whether the service computes rightly. */
		ready: (call?: CallOptions) => answer<"getReadiness">(http.GET("/health/ready", sent(call))),
	};
}

export type Raykettle = ReturnType<typeof createRaykettle>;

function sent({ signal, requestId }: CallOptions = {}) {
	return {
		...(signal && { signal }),
		...(requestId !== undefined && { headers: { "X-Request-Id": requestId } }),
	};
}

interface Outcome {
	readonly data?: unknown;
	readonly error?: unknown;
	readonly response: Response;
}

async function answer<N extends Name>(call: Promise<Outcome>): Promise<Answer<N>> {
	const { data, error, response } = await call;
	if (data === undefined) throw new RaykettleProblem(response, error);
	return data as Answer<N>;
}
