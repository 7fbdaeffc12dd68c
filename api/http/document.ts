import type { Maybe } from "../operations/maybe.ts";
import type { AppOptions } from "./app-options.ts";
import type { EdgeContext } from "./reply.ts";

/** A text served as it stands: a page, the contract. */
export interface Document {
	readonly path: string;
	readonly operationId: string;
	readonly summary: string;
	readonly mediaTypes: readonly string[];
	readonly say: (c: EdgeContext, config: AppOptions) => Maybe<Response>;
}
