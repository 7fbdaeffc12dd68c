import pino from "pino";
import type { Deployment } from "../config/deployment.ts";
import { failureLine } from "./failure.ts";
import type { RequestRecord } from "./request-record.ts";

export interface Log {
	readonly requests: (batch: readonly RequestRecord[]) => void;
	readonly failure: (error: unknown, requestId?: string) => void;
	/** Writes buffered lines. */
	readonly flush: () => void;
}

const MEMORY = 12_288; // [bytes] buffer size; buffered lines are lost if the process is killed
const PAUSE = 1000; // [ms] longest time before a line is written

/** One JSON line per event on standard output, written without delaying requests. The only request data in it is a well-formed
 *  request id: no address, key, query or body, and no error message. */
export function logOf(level: Deployment["logLevel"]): Log {
	const destination = pino.destination({ dest: 1, sync: false, minLength: MEMORY, periodicFlush: PAUSE });
	const log = pino({ level, base: null, timestamp: false }, destination); // each event has its own time
	return {
		requests: (batch) => {
			for (const { at, seconds, ...request } of batch)
				log.info({ time: at, ...request, ms: Math.round(seconds * 1e5) / 100 }, "request");
		},
		failure: (error, requestId) =>
			log.error({ time: Date.now(), requestId, ...failureLine(error) }, "failure"),
		flush: () => {
			if (level !== "silent") destination.flushSync();
		},
	};
}
