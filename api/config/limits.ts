import type { Compute } from "../compute/answer-text.ts";
import type { Headers } from "../http/headers.ts";
import type { EdgeContext } from "../http/reply.ts";
import type { Asset } from "../http/static-file.ts";
import type { Backlog } from "../operations/backlog.ts";
import type { Maybe } from "../operations/maybe.ts";
import type { Settings } from "./settings.ts";

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

/** Lets a request in, with the headers that its answer carries for it, or throws the problem that turns it away. */
export interface Admit {
	(c: EdgeContext): Maybe<Headers>;
	readonly keysRequired: boolean; // whether nobody is let in without a key, so that no shared cache may keep an answer
}

/** What differs from one deployment to the next. */
export interface Config {
	/** The page at `/`, where the entry could read it; without it `/` answers in JSON alone. */
	readonly indexPage: string | undefined;
	/** Files for browsers, where the entry could read them: the widget, the docs page and what pages need. */
	readonly assets?: readonly Asset[];
	/** The usual ones unless given. */
	readonly settings?: Settings;
	/** What is held for callers, where the entry knows what they have taken; what is being put together alone unless given. */
	readonly backlog?: Backlog;
	/** Where costly answers are worked out; in place unless given. */
	readonly compute?: Compute;
	/** Lets everyone in unless given. */
	readonly admit?: Admit;
	/** Packs a long answer for callers who take gzip, where nothing in front does. */
	readonly pack?: (text: string) => Promise<Uint8Array<ArrayBuffer>>;
	/** Told of each request once its answer is ready, but for probes that go well. */
	readonly observe?: (seen: Seen) => void;
	/** Told of each failure of the service itself, whose inside a caller never sees. */
	readonly onFailure: (error: unknown, requestId: string) => void;
}

/** What an operator may know of a request: nothing that the caller sent but the request id. */
export interface Seen {
	readonly requestId: string;
	readonly operation: string; // its operationId; `document`, `asset` or `none` for what is no operation
	readonly method: string;
	readonly status: number;
	readonly seconds: number; // from its first line to its answer
	readonly at: number; // when it was answered [ms since 1970]
}
