import type { operations } from "./schema.d.ts";

/** Options of one call. */
export interface CallOptions {
	/** Aborts the call. */
	readonly signal?: AbortSignal;
	/** Timeout of the complete call in milliseconds, in place of the client's; 0 for no limit. */
	readonly timeoutMs?: number;
	/** Number of retries after a 429 or 503, in place of the client's. */
	readonly retries?: number;
	/** Your id for the request; the response and the service's log repeat it. */
	readonly requestId?: string;
}

/** An operation of the contract, by its operationId. */
export type Name = keyof operations;

type Parameters<N extends Name> = operations[N]["parameters"];
type Part<P> = [NonNullable<P>] extends [never] ? unknown : NonNullable<P>;
/** Input of a GET: its query and the parameters of its path. */
export type Query<N extends Name> = Part<Parameters<N>["query"]> & Part<Parameters<N>["path"]>;
type Posting = { [N in Name]: operations[N] extends { requestBody: object } ? N : never }[Name];
/** Body of a POST. */
export type Body<N extends Posting> = operations[N]["requestBody"]["content"]["application/json"];

type Forms<N extends Name> = operations[N]["responses"][200]["content"];
/** Answer of an operation. */
export type Answer<N extends Name> = Forms<N>["application/json" & keyof Forms<N>];
/** Media types of an operation besides JSON: a chart, a table. */
export type OtherForm<N extends Name> = Exclude<keyof Forms<N>, "application/json">;

/** Options of one call of an operation that has other formats. */
export interface FormOptions<F extends string | undefined> extends CallOptions {
	/** Returns the same answer as text in another format: a chart (`image/svg+xml`) or a table (`text/csv`). */
	readonly as?: F;
}
/** The answer, or its text where another format was requested. */
export type AnswerIn<N extends Name, F extends string | undefined> = F extends string ? string : Answer<N>;
