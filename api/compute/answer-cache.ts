import type { Job } from "../operations/operation.ts";
import type { Compute } from "./answer-text.ts";
import { cancellationProblem } from "./cancellation.ts";
import { twoGenerations } from "./two-generation-cache.ts";

/** Work in progress, shared by all requests that wait for it. */
interface Shared {
	readonly text: Promise<string>;
	readonly stop: AbortController;
	waiting: number;
}

/** Caches answers, so that identical requests cost no more than one of them. A request that arrives during the computation
 *  waits for the same answer, and the work continues until the last waiting client has disconnected.
 *  The key is the complete request, so a cached answer reveals nothing that computing it would not.
 *  @param compute  computes answers that are not cached
 *  @param limit    memory for cached answers [bytes, two per character] */
export function answerCache(compute: Compute, limit: number): Compute {
	const answers = twoGenerations<string>({
		room: limit,
		weightOf: (key, text) => 2 * (key.length + text.length),
	});
	const inProgress = new Map<string, Shared>();
	const startWork = (key: string, job: Job): Shared => {
		const stop = new AbortController();
		const shared: Shared = { text: compute(job, () => stop.signal), stop, waiting: 0 };
		inProgress.set(key, shared);
		const finish = () => {
			if (inProgress.get(key) === shared) inProgress.delete(key);
		};
		shared.text.then((text) => {
			answers.put(key, text);
			finish();
		}, finish);
		return shared;
	};
	return async (job, signalOf) => {
		const key = keyOf(job);
		const known = answers.get(key);
		if (known !== undefined) return known;
		const signal = signalOf();
		if (signal.aborted) throw cancellationProblem(signal);
		const shared = inProgress.get(key) ?? startWork(key, job);
		return sharedText(shared, signal, () => {
			if (inProgress.get(key) === shared) inProgress.delete(key); // later requests do not wait for stopped work
		});
	};
}

/** The text of shared work, until a signal fires; the last request to leave stops the work. */
function sharedText(shared: Shared, signal: AbortSignal, onStop: () => void): Promise<string> {
	shared.waiting += 1;
	return new Promise((resolve, reject) => {
		const leave = () => {
			shared.waiting -= 1;
			reject(cancellationProblem(signal));
			if (shared.waiting > 0) return;
			onStop();
			shared.stop.abort(signal.reason);
		};
		signal.addEventListener("abort", leave, { once: true });
		const done = () => signal.removeEventListener("abort", leave);
		shared.text.then(
			(text) => {
				done();
				resolve(text);
			},
			(error) => {
				done();
				reject(error);
			},
		);
	});
}

const keyOf = ({ operation, type, sent }: Job): string =>
	`${operation.operationId} ${type} ${JSON.stringify(sent)}`;
