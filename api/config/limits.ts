/** Versions in /v1/meta. The service's version is that of package.json, which a test checks. */
export const VERSIONS = { service: "0.1.0", contract: "1.0.0", data: "1.0.0" } as const;

export interface Limit {
	readonly value: number;
	readonly unit: string;
	readonly meaning: string;
	readonly beyond: string;
}

/** The limits that are the same in every deployment, most of them part of the contract. /v1/meta lists them before those
 *  that a deployment chooses (`SETTINGS`). */
export const LIMITS = {
	headerBytes: {
		value: 16_384,
		unit: "bytes",
		meaning: "size of the request line and headers together",
		beyond: "431 headers-too-large",
	},
	instantsPerRequest: {
		value: 366,
		unit: "instants",
		meaning: "times in one request to /v1/sun/position",
		beyond: "400 invalid-request",
	},
	curvePoints: {
		value: 200,
		unit: "points",
		meaning: "apertures of the curve in one request to /v1/dish/optics",
		beyond: "400 invalid-request",
	},
	receiverStates: {
		value: 200,
		unit: "rows",
		meaning: "temperatures times winds times tilts in one request to /v1/receiver/losses",
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
		meaning: "operations in one request to /v1/batch",
		beyond: "400 invalid-request",
	},
	faultsListed: {
		value: 100,
		unit: "faults",
		meaning: "faults listed in one problem document",
		beyond: "further faults are omitted",
	},
	arrivalTime: {
		value: 30,
		unit: "seconds",
		meaning: "time within which a request must arrive completely",
		beyond: "408 request-timeout",
	},
} as const satisfies Readonly<Record<string, Limit>>;
