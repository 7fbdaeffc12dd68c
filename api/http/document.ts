import type { Maybe } from "../operations/maybe.ts";
import type { AppOptions } from "./app-options.ts";
import type { EdgeContext } from "./reply.ts";

/** A text served at a path of its own: a page, the contract. */
export interface Document {
	readonly path: string;
	readonly operationId: string;
	readonly summary: string;
	readonly mediaTypes: readonly string[];
	readonly respond: (c: EdgeContext, config: AppOptions) => Maybe<Response>;
}
