const BURST = 400; // [cost units per thread] that may wait while the pool keeps up: about as many milliseconds
const MEMORY = 300; // [ms] over which the share of time without a free thread is taken
const STRAINED = 0.9; // of that time; the share is 0.85 where two threads are in use nine tenths of the time (M/M/2)

/** Decides who may wait for a thread. A burst may; but once the threads have hardly been free for a while, waiting only
 *  grows, and a request is let in only where it waits no longer than about as long as it will take itself.
 *  So what is accepted is answered soon, however much is asked.
 *  @param threads  threads of the pool */
export function admission(threads: number) {
	let share = 0; // of the recent time without a free thread
	let full = false;
	let since = 0; // [ms] that `share` holds for
	const advance = (now: number) => {
		share += ((full ? 1 : 0) - share) * -Math.expm1((since - now) / MEMORY);
		since = now;
	};
	return {
		/** Told whenever a thread is taken or becomes free. */
		threadsTaken(taken: number, now: number): void {
			advance(now);
			full = taken >= threads;
		},
		/** @param cost     estimated cost of the request
		 *  @param waiting  cost of what waits already
		 *  @param now      time [ms] */
		admits(cost: number, waiting: number, now: number): boolean {
			advance(now);
			return waiting < threads * (share > STRAINED ? cost : BURST);
		},
	};
}
