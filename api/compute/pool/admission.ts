const BURST = 400; // [cost units per thread] that may wait while the pool keeps up; about as many milliseconds
const MEMORY = 300; // [ms] time constant of the share of time without a free thread
const STRAINED = 0.9; // [-] that share above which the queue closes; it is 0.85 where two threads are busy 90 % of the time (M/M/2)

/** Decides whether a request may queue for a thread. Bursts may. Once the threads have been busy for a while, the queue would only
 *  grow, and a request is accepted only if it waits no longer than it takes to compute itself.
 *  So accepted requests are answered soon under any load.
 *  @param threads  threads of the pool */
export function admission(threads: number) {
	let share = 0; // recent share of time without a free thread
	let full = false;
	let since = 0; // [ms] time of `share`
	const advance = (now: number) => {
		share += ((full ? 1 : 0) - share) * -Math.expm1((since - now) / MEMORY);
		since = now;
	};
	return {
		/** Call whenever a thread starts or finishes work. */
		busyThreads(busy: number, now: number): void {
			advance(now);
			full = busy >= threads;
		},
		/** @param cost     estimated cost of the request
		 *  @param waiting  total cost of the queue
		 *  @param now      time [ms] */
		admits(cost: number, waiting: number, now: number): boolean {
			advance(now);
			return waiting < threads * (share > STRAINED ? cost : BURST);
		},
	};
}
