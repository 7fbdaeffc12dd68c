const LONGEST = 0x7fffffff; // [ms] that a timer runs

/** Does work under a signal that fires with the caller's own, or when the time is up, and lets go of both at its end.
 *  AbortSignal.any fires likewise, but of each one Node 20 keeps some 400 bytes for as long as the process runs.
 *  @param timeout  [ms]; 0 for no limit */
export async function limited<T>(
	own: AbortSignal | undefined,
	timeout: number,
	work: (signal: AbortSignal) => Promise<T>,
): Promise<T> {
	const controller = new AbortController();
	const leave = () => controller.abort(own?.reason);
	const late = () => controller.abort(new DOMException("The time is up", "TimeoutError"));
	const timer = timeout > 0 ? setTimeout(late, Math.min(timeout, LONGEST)) : undefined;
	if (own?.aborted) leave();
	own?.addEventListener("abort", leave);
	try {
		return await work(controller.signal);
	} finally {
		clearTimeout(timer);
		own?.removeEventListener("abort", leave);
	}
}
