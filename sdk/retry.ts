const BUSY: readonly number[] = [429, 503]; // the service did no work, so a retry is safe
const LONGEST_WAIT = 30_000; // [ms] a longer wait is not worth a retry
const FIRST_WAIT = 500; // [ms] where the service states no time; doubled at each attempt

/** Time that the service asks clients to wait [ms]; undefined where it states none. */
export function retryAfter(headers: Headers): number | undefined {
	const text = headers.get("retry-after")?.trim();
	if (!text) return undefined;
	const wait = /^\d+$/.test(text) ? Number(text) * 1000 : Date.parse(text) - Date.now();
	return Number.isNaN(wait) ? undefined : Math.max(0, wait);
}

/** Sends a request again while the service is busy, up to a number of retries. Resolves to the last response.
 *  @param until  deadline of the call [ms since 1970]: a wait that would outlast it is not started */
export async function patiently(
	ask: () => Promise<Response>,
	retries: number,
	signal: AbortSignal,
	until: number,
): Promise<Response> {
	for (let tried = 0; ; tried++) {
		const response = await ask();
		if (!BUSY.includes(response.status) || tried >= retries) return response;
		const wait = retryAfter(response.headers) ?? FIRST_WAIT * 2 ** tried * (0.5 + Math.random() / 2);
		if (wait > LONGEST_WAIT || Date.now() + wait >= until) return response;
		await response.body?.cancel();
		await pause(wait, signal);
	}
}

function pause(wait: number, signal: AbortSignal): Promise<void> {
	return new Promise((resolve, reject) => {
		const over = () => {
			clearTimeout(timer);
			reject(signal.reason);
		};
		const timer = setTimeout(() => {
			signal.removeEventListener("abort", over);
			resolve();
		}, wait);
		if (signal.aborted) over();
		else signal.addEventListener("abort", over, { once: true });
	});
}
