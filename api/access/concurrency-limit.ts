import { type Maybe, settled } from "../operations/maybe.ts";
import { overloaded } from "../problem/problem.ts";

/** Places for requests in flight. Who finds none hears so at once. */
export interface ConcurrencyLimit {
	/** Refuses while there is no place: before anything of a request is read. */
	check(): void;
	/** Does what a request asks for in a place of its own, once the request is there whole: who sends half of one and waits
	 *  would keep others out for nothing. */
	hold<T>(work: () => Maybe<T>): Maybe<T>;
}

/** @param most  requests in flight at most */
export function concurrencyLimit(most: number): ConcurrencyLimit {
	let inFlight = 0;
	const check = () => {
		if (inFlight >= most) throw overloaded(`${most} requests are in flight already`);
	};
	return {
		check,
		hold(work) {
			check();
			const result = work();
			if (!(result instanceof Promise)) return result; // done before anything else could begin
			inFlight += 1;
			return settled(result, () => {
				inFlight -= 1;
			});
		},
	};
}
