import type { Job } from "../operations/operation.ts";
import { problemOf } from "./abandoned.ts";
import type { Compute } from "./answer-text.ts";
import { twoGenerations } from "./two-generation-cache.ts";

/** Work that is under way, for as many as wait for it. */
interface Shared {
	readonly text: Promise<string>;
	readonly stop: AbortController;
	waiting: number;
}

/** Remembers answers, so that the visitors of a page who all ask the same thing cost no more than one of them: the same
 *  request gives the same bytes, whoever sends it. Who comes while it is being worked out waits for that answer, and the work
 *  goes on until the last of them has left.
 *  Only the very same request, letter for letter, is given it: so it tells nobody more than computing it would.
 *  @param compute  works out what is not remembered
 *  @param most     what may be kept [bytes, two a letter] */
export function answerCache(compute: Compute, most: number): Compute {
	const answers = twoGenerations<string>({
		room: most,
		weightOf: (key, text) => 2 * (key.length + text.length),
	});
	const underWay = new Map<string, Shared>();
	const begun = (key: string, job: Job): Shared => {
		const stop = new AbortController();
		const shared: Shared = { text: compute(job, () => stop.signal), stop, waiting: 0 };
		underWay.set(key, shared);
		const over = () => {
			if (underWay.get(key) === shared) underWay.delete(key);
		};
		shared.text.then((text) => {
			answers.put(key, text);
			over();
		}, over);
		return shared;
	};
	return async (job, signalOf) => {
		const key = keyOf(job);
		const known = answers.get(key);
		if (known !== undefined) return known;
		const signal = signalOf();
		if (signal.aborted) throw problemOf(signal);
		const shared = underWay.get(key) ?? begun(key, job);
		return waited(shared, signal, () => {
			if (underWay.get(key) === shared) underWay.delete(key); // who asks from now on does not wait for what is being stopped
		});
	};
}

/** Waits for shared work as long as a signal lets it; the last to leave stops the work. */
function waited(shared: Shared, signal: AbortSignal, stopped: () => void): Promise<string> {
	shared.waiting += 1;
	return new Promise((resolve, reject) => {
		const leave = () => {
			shared.waiting -= 1;
			reject(problemOf(signal));
			if (shared.waiting > 0) return;
			stopped();
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

const keyOf = ({ operation, type, given }: Job): string =>
	`${operation.operationId} ${type} ${JSON.stringify(given)}`;
