const LONGEST = 0x7fffffff; // [ms] that a timer runs

/** A signal for work that somebody waits for. */
export interface Deadline {
	readonly signal: AbortSignal; // its reason is a TimeoutError where time is up
	/** Lets go of it, once the work is done. */
	readonly release: () => void;
}

/** Fires when whoever waits leaves, or when the time is up. AbortSignal.any fires likewise, but of each one Node 20 keeps some 400
 *  bytes for as long as the process runs.
 *  @param left  fires when he leaves; undefined where he cannot
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

/** Does work under a deadline, which it lets go of at the end: when the work is done, or the deadline fires, whether the work
 *  follows the signal or not. */
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
