import { wholeNumber } from "./environment.ts";

/** A number that a deployment may choose. */
interface Setting {
	readonly variable: string; // its name in the environment
	readonly usual: number;
	readonly least: number;
	readonly most: number;
	readonly unit: string;
	readonly meaning: string;
	readonly beyond?: string; // response to a request beyond it; absent where no client meets it
}

/** Every number that a deployment may choose, in the order of /v1/meta and the contributors' table. */
export const SETTINGS = {
	bodyBytes: {
		variable: "BODY_BYTES",
		usual: 262_144,
		least: 1024,
		most: 16_777_216,
		unit: "bytes",
		meaning: "size of a request body",
		beyond: "413 payload-too-large",
	},
	computingBudget: {
		variable: "COMPUTING_BUDGET",
		usual: 3000,
		least: 100,
		most: 100_000,
		unit: "cost units",
		meaning: "cost of one request as `costs` states it, the items of a batch together",
		beyond: "422 too-large, before anything is computed",
	},
	computingTime: {
		variable: "COMPUTING_TIME_S",
		usual: 20,
		least: 1,
		most: 300,
		unit: "seconds",
		meaning: "time to compute a response in a thread, including the wait for the thread",
		beyond:
			"503 overloaded, and the computation is stopped; 422 too-large for a range that would certainly take longer",
	},
	answerBytes: {
		variable: "ANSWER_BYTES",
		usual: 8_388_608,
		least: 65_536,
		most: 268_435_456,
		unit: "bytes",
		meaning: "size of one response before compression, the items of a batch together",
		beyond: "422 too-large",
	},
	unreadMemory: {
		variable: "UNREAD_MB",
		usual: 64,
		least: 1,
		most: 4096,
		unit: "MB",
		meaning: "responses that clients have not read yet, and batches being assembled, in one instance",
		beyond: "503 overloaded for all but probes, until they are read",
	},
	unreadTime: {
		variable: "UNREAD_TIME_S",
		usual: 30,
		least: 1,
		most: 3600,
		unit: "seconds",
		meaning: "time within which a client must read part of its response; ten times that for all of it",
		beyond: "the connection is closed",
	},
	requestsInFlight: {
		variable: "CONCURRENCY",
		usual: 1000,
		least: 1,
		most: 100_000,
		unit: "requests",
		meaning: "requests in flight at once in one instance, each counted from its complete arrival",
		beyond: "503 overloaded, immediately",
	},
	rateRequests: {
		variable: "RATE_REQUESTS",
		usual: 600,
		least: 0,
		most: 10_000_000,
		unit: "requests",
		meaning: "requests of one key or address within `rateWindow`, counted by each instance; 0 for no limit",
		beyond: "429 too-many-requests",
	},
	rateWindow: {
		variable: "RATE_WINDOW_S",
		usual: 60,
		least: 1,
		most: 3600,
		unit: "seconds",
		meaning: "time over which requests are counted",
		beyond: "the count starts again",
	},
	trustedProxies: {
		variable: "TRUSTED_PROXIES",
		usual: 0,
		least: 0,
		most: 10,
		unit: "proxies",
		meaning: "proxies in front whose X-Forwarded-For is trusted; 0 uses the address of the connection",
	},
	answerMemory: {
		variable: "ANSWER_MEMORY_MB",
		usual: 16,
		least: 0,
		most: 4096,
		unit: "MB",
		meaning: "responses cached for identical requests; 0 for no cache",
	},
	grace: {
		variable: "GRACE_S",
		usual: 25,
		least: 1,
		most: 300,
		unit: "seconds",
		meaning: "time for requests in flight to finish after the process receives a stop signal",
	},
} as const satisfies Readonly<Record<string, Setting>>;

export type Settings = Readonly<Record<keyof typeof SETTINGS, number>>;

type Variable = (typeof SETTINGS)[keyof typeof SETTINGS]["variable"];

/** The variables that choose settings, with how each is read. */
export const SETTING_VARIABLES = Object.fromEntries(
	Object.values(SETTINGS).map(({ variable, least, most }) => [variable, wholeNumber(least, most)]),
) as Record<Variable, ReturnType<typeof wholeNumber>>;

/** The settings that variables choose, with the usual ones for the rest. */
export function settingsFrom(variables: Readonly<Partial<Record<Variable, number | undefined>>>): Settings {
	const chosen = Object.entries(SETTINGS).map(([name, { variable, usual }]) => [
		name,
		variables[variable] ?? usual,
	]);
	return Object.fromEntries(chosen) as Settings;
}

/** The settings of a deployment that chooses none. */
export const USUAL_SETTINGS = settingsFrom({});
