/** What an operator may know of a request: nothing that the caller sent but the request id. */
export interface RequestRecord {
	readonly requestId: string;
	readonly operation: string; // its operationId; `document`, `asset` or `none` for what is no operation
	readonly method: string;
	readonly status: number;
	readonly seconds: number; // from its first line to its answer
	readonly at: number; // when it was answered [ms since 1970]
}
