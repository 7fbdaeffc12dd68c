import pino from "pino";
import type { Deployment } from "../config/deployment.ts";
import { failureLine } from "./failure.ts";
import type { RequestRecord } from "./request-record.ts";

export interface Log {
	readonly seen: (seen: readonly RequestRecord[]) => void;
	readonly failed: (error: unknown, requestId?: string) => void;
	/** Writes what is still in memory. */
	readonly flush: () => void;
}

const MEMORY = 12_288; // [bytes] written at once; what is in memory is lost if the process is killed
const PAUSE = 1000; // [ms] after which a line is written in any case

/** One JSON line an event on standard output, written without holding up a request. Nothing that a caller sent is in it
 *  but a well-formed request id: no address, no key, no query, no body, and of an error not even its message. */
export function logOf(level: Deployment["logLevel"]): Log {
	const destination = pino.destination({ dest: 1, sync: false, minLength: MEMORY, periodicFlush: PAUSE });
	const log = pino({ level, base: null, timestamp: false }, destination); // an event brings its own time
	return {
		seen: (batch) => {
			for (const { at, seconds, ...request } of batch)
				log.info({ time: at, ...request, ms: Math.round(seconds * 1e5) / 100 }, "request");
		},
		failed: (error, requestId) =>
			log.error({ time: Date.now(), requestId, ...failureLine(error) }, "failure"),
		flush: () => {
			if (level !== "silent") destination.flushSync();
		},
	};
}
