import { type Maybe, settled } from "./maybe.ts";
import { overloaded } from "./problem.ts";

/** Counts requests in flight and refuses those beyond the limit at once, before anything of them is read.
 *  @param most  requests in flight at most */
export function shedding(most: number): <T>(work: () => Maybe<T>) => Maybe<T> {
	let inFlight = 0;
	return (work) => {
		if (inFlight >= most) throw overloaded(`${most} requests are in flight already`);
		const result = work();
		if (!(result instanceof Promise)) return result; // done before anything else could begin
		inFlight += 1;
		return settled(result, () => {
			inFlight -= 1;
		});
	};
}
