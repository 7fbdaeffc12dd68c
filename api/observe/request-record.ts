/** Record of a request for logs and metrics. The request id is the only request data in it. */
export interface RequestRecord {
	readonly requestId: string;
	readonly operation: string; // operationId; `document`, `asset` or `none` for other paths
	readonly method: string;
	readonly status: number;
	readonly seconds: number; // from first line to response
	readonly at: number; // time of the response [ms since 1970]
}
