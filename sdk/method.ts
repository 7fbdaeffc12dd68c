import type { operations } from "./schema.d.ts";

/** What one call may carry besides its question. */
export interface CallOptions {
	/** Ends the call when it fires. */
	readonly signal?: AbortSignal;
	/** Milliseconds for the whole call, from the first try to the end of the answer's body; 0 for no limit. Instead of the client's own. */
	readonly timeoutMs?: number;
	/** How often a 429 or 503 may be asked again. Instead of the client's own. */
	readonly retries?: number;
	/** Your own id for the request; the answer and the service's log repeat it. */
	readonly requestId?: string;
}

/** An operation of the contract, by its operationId. */
export type Name = keyof operations;

type Parameters<N extends Name> = operations[N]["parameters"];
type Part<P> = [NonNullable<P>] extends [never] ? unknown : NonNullable<P>;
/** What a GET is asked: its query, and beside it what stands in its path. */
export type Query<N extends Name> = Part<Parameters<N>["query"]> & Part<Parameters<N>["path"]>;
type Posting = { [N in Name]: operations[N] extends { requestBody: object } ? N : never }[Name];
/** What a POST is sent. */
export type Body<N extends Posting> = operations[N]["requestBody"]["content"]["application/json"];

type Forms<N extends Name> = operations[N]["responses"][200]["content"];
/** What an operation answers. */
export type Answer<N extends Name> = Forms<N>["application/json" & keyof Forms<N>];
/** Media types in which an operation answers besides JSON: a chart, a table. */
export type OtherForm<N extends Name> = Exclude<keyof Forms<N>, "application/json">;

/** What one call of an operation with other forms may carry. */
export interface FormOptions<F extends string | undefined> extends CallOptions {
	/** Returns the same answer as a text in another form, such as a chart (`image/svg+xml`) or a table (`text/csv`). */
	readonly as?: F;
}
/** The answer, or its text where another form was asked for. */
export type AnswerIn<N extends Name, F extends string | undefined> = F extends string ? string : Answer<N>;
