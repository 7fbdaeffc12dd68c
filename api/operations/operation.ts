import type { z } from "@hono/zod-openapi";
import type { Settings } from "../config/settings.ts";
import type { Backlog } from "./backlog.ts";
import type { Maybe } from "./maybe.ts";

export type Tag = "Sun" | "Water" | "Dish" | "Loop" | "Tank" | "Plant" | "Service";

/** One request that the contract shows, and that the tests send. For a GET the value holds its query. */
export interface Example {
	readonly summary: string;
	readonly value: Readonly<Record<string, unknown>>;
}

/** An answer told in other forms than JSON, from what the JSON would say. */
interface Forms<Input, Output> {
	chart(answer: Output, input: Input): string; // image/svg+xml
	table(answer: Output, input: Input): string; // text/csv
}

/** The media types of an operation's answer, the one for no wish first. */
export const MEDIA_TYPES = ["application/json", "image/svg+xml", "text/csv"] as const;

export type MediaType = (typeof MEDIA_TYPES)[number];

/** What an operation may use besides its input: the deployment's settings, and for a batch a way to have its items answered. */
export interface Means {
	readonly settings: Settings;
	readonly backlog: Backlog; // counts what is put together for callers
	readonly compute: (asked: Job) => Maybe<string>;
	readonly failed: (error: unknown) => void; // tells the operator
}

/** One operation of the service: what the contract says of it, and the plain function that answers it.
 *  It knows nothing of HTTP beyond its method and path, so a batch or a worker can run it as well. */
interface Definition<Input extends z.ZodType, Output extends z.ZodType> {
	readonly method: "get" | "post";
	readonly path: string; // `{id}` in it is a parameter that the input holds beside the query; no such thing is 404
	readonly operationId: string;
	readonly tag: Tag;
	readonly summary: string;
	readonly description: string;
	readonly input: Input; // query of a GET, body of a POST
	readonly output: Output;
	readonly examples: Readonly<Record<string, Example>>;
	readonly maxAge: number; // how long a caller may keep the answer of a GET [s]; 0 for never
	readonly constant?: true; // it never says anything else, and is worked out once, though a caller must ask each time
	readonly refusals?: readonly (404 | 422 | 503)[]; // what a GET can answer beyond the faults of any query; a POST has 422
	readonly forms?: Forms<z.output<Input>, z.output<Output>>;
	/** Puts the text together out of others' answers, each checked and rounded already, and does next to nothing itself. */
	readonly composite?: (given: unknown, means: Means) => Maybe<string>;
	/** @param input  the request, checked and with its defaults filled in
	 *  @param given  the request as it came, to tell a default from a choice */
	answer(input: z.output<Input>, given: unknown, means: Means): Maybe<z.input<Output>>;
}

export const mediaTypes = ({ forms }: Operation) => (forms ? MEDIA_TYPES : (["application/json"] as const));

export type Operation = Definition<z.ZodType, z.ZodType>;

/** Checks an operation's parts against one another at compile time. */
export function operation<Input extends z.ZodType, Output extends z.ZodType>(
	definition: Definition<Input, Output>,
): Operation {
	return definition;
}

/** An operation with its request, and all that its answer depends on. */
export interface Job {
	readonly operation: Operation;
	readonly type: MediaType;
	readonly input: unknown; // checked, with its defaults filled in
	readonly given: unknown; // as it came
	readonly cost: number; // as estimated [cost units]
}
