import { ProblemError } from "./problem.ts";

const RETRY = { "Retry-After": "1" }; // [s] most answers take far less

/** Counts requests in flight and refuses those beyond the limit at once, before anything of them is read.
 *  @param most  requests in flight at most */
export function shedding(most: number): <T>(work: () => Promise<T>) => Promise<T> {
	let inFlight = 0;
	return async (work) => {
		if (inFlight >= most)
			throw new ProblemError("overloaded", `${most} requests are in flight already`, [], RETRY);
		inFlight += 1;
		try {
			return await work();
		} finally {
			inFlight -= 1;
		}
	};
}
