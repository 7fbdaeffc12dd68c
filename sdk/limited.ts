const LONGEST = 0x7fffffff; // [ms] longest time that a timer supports

/** A signal that limits work in time. */
export interface Deadline {
	readonly signal: AbortSignal; // its reason is a TimeoutError after the timeout
	/** Frees its timer and listener once the work is done. */
	readonly release: () => void;
}

/** Aborts when the caller aborts, or after a time. AbortSignal.any does the same, but Node 20 keeps some 400 bytes of each one for as
 *  long as the process runs.
 *  @param left  the caller's signal; undefined where it has none
 *  @param time  [ms]; 0 for no limit */
export function deadline(left: AbortSignal | undefined, time: number): Deadline {
	const own = new AbortController();
	const leave = () => own.abort(left?.reason);
	const late = () => own.abort(new DOMException("The time is up", "TimeoutError"));
	const timer = time > 0 ? setTimeout(late, Math.min(time, LONGEST)) : undefined;
	if (left?.aborted) leave();
	left?.addEventListener("abort", leave);
	const release = () => {
		clearTimeout(timer);
		left?.removeEventListener("abort", leave);
	};
	return { signal: own.signal, release };
}

/** Does work under a deadline and frees it at the end: when the work is done or the deadline aborts, even if the work ignores the
 *  signal. */
export async function limited<T>(
	left: AbortSignal | undefined,
	time: number,
	work: (signal: AbortSignal) => Promise<T>,
): Promise<T> {
	const { signal, release } = deadline(left, time);
	try {
		signal.throwIfAborted();
		const over = new Promise<never>((_, reject) =>
			signal.addEventListener("abort", () => reject(signal.reason)),
		);
		return await Promise.race([work(signal), over]);
	} finally {
		release();
	}
}
