import type { Asset } from "./asset.ts";

/** Versions that /v1/meta tells. The service's is that of package.json: a test holds them together. */
export const VERSIONS = { service: "0.1.0", contract: "1.0.0", data: "1.0.0" } as const;

interface Limit {
	readonly value: number;
	readonly unit: string;
	readonly meaning: string;
	readonly beyond: string;
}

/** Every limit in force. The schemas, the edge and the server read them here; /v1/meta lists them. */
export const LIMITS = {
	bodyBytes: {
		value: 262_144,
		unit: "bytes",
		meaning: "size of a request body",
		beyond: "413 payload-too-large",
	},
	headerBytes: {
		value: 16_384,
		unit: "bytes",
		meaning: "size of the request line and headers together",
		beyond: "431 headers-too-large",
	},
	instantsPerRequest: {
		value: 366,
		unit: "instants",
		meaning: "times asked of /v1/sun/position at once",
		beyond: "400 invalid-request",
	},
	curvePoints: {
		value: 200,
		unit: "points",
		meaning: "apertures asked of the curve of /v1/dish/optics",
		beyond: "400 invalid-request",
	},
	receiverStates: {
		value: 200,
		unit: "rows",
		meaning: "temperatures times winds times tilts asked of /v1/receiver/losses at once",
		beyond: "422 too-large",
	},
	testRunTime: {
		value: 36,
		unit: "hours",
		meaning: "time from the first to the last row of /v1/test-run",
		beyond: "422 too-large",
	},
	batchItems: {
		value: 100,
		unit: "items",
		meaning: "operations asked of /v1/batch at once",
		beyond: "400 invalid-request",
	},
	batchCost: {
		value: 3000,
		unit: "cost units",
		meaning: "cost of all items of /v1/batch together, each as `costs` states it",
		beyond: "422 too-large",
	},
	faultsListed: {
		value: 100,
		unit: "faults",
		meaning: "faults that one problem lists",
		beyond: "the rest are left out",
	},
	arrivalTime: {
		value: 30,
		unit: "seconds",
		meaning: "time within which a request must have arrived whole",
		beyond: "408 request-timeout",
	},
} as const satisfies Readonly<Record<string, Limit>>;

/** What differs from one deployment to the next. */
export interface Config {
	/** The page at `/`, where the entry could read it; without it `/` answers in JSON alone. */
	readonly indexPage: string | undefined;
	/** Files for browsers, where the entry could read them: the widget, the docs page and what pages need. */
	readonly assets?: readonly Asset[];
	/** Told of each failure of the service itself, whose inside a caller never sees. */
	readonly onFailure: (error: unknown, requestId: string) => void;
}
