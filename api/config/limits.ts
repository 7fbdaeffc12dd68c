/** Versions that /v1/meta tells. The service's is that of package.json: a test holds them together. */
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
