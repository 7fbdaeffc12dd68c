import { type Maybe, whenSettled } from "../operations/maybe.ts";
import { overloaded } from "../problem/problem.ts";

/** Limit on requests in flight. Further requests are refused at once. */
export interface ConcurrencyLimit {
	/** Refuses a request at the limit, before its body is read. */
	check(): void;
	/** Counts a request in flight while it is processed. It counts once it has arrived completely, so that incomplete requests do not
	 *  block others. */
	hold<T>(work: () => Maybe<T>): Maybe<T>;
}

/** @param limit  requests in flight at most */
export function concurrencyLimit(limit: number): ConcurrencyLimit {
	let inFlight = 0;
	const check = () => {
		if (inFlight >= limit) throw overloaded(`The limit of ${limit} requests in flight is reached`);
	};
	return {
		check,
		hold(work) {
			check();
			const result = work();
			if (!(result instanceof Promise)) return result; // completed synchronously
			inFlight += 1;
			return whenSettled(result, () => {
				inFlight -= 1;
			});
		},
	};
}
