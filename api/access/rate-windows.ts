import { twoGenerations } from "../compute/two-generation-cache.ts";

/** A period that starts with a client's first request, and the number of requests in it. */
export interface Window {
	readonly ends: number; // [ms]
	used: number;
}

/** The windows of many clients, all of the same length. */
export interface Windows {
	/** The window of a client at a time [ms], or a new one that starts then. */
	at(id: string, now: number): Window;
	/** Counts a request in the window returned by `at`; `requests` of them exhaust it. */
	use(id: string, window: Window, requests: number, now: number): void;
}

/** Windows of keys. All are kept, as their number is that of the keys file. */
export function keyWindows(span: number): Windows {
	const windows = new Map<string, Window>();
	return {
		at: (id, now) => currentWindow(windows.get(id), span, now),
		use(id, window) {
			window.used += 1;
			windows.set(id, window);
		},
	};
}

/** Windows of addresses. Addresses are unlimited, so at most `callers` of them are kept, and as many again with an exhausted quota.
 *
 *  What a flood of addresses gains: the two sets are separate, so new addresses displace only clients with quota left, whose
 *  count then restarts. That is one more quota per `callers`/2 addresses, which could have sent far more themselves. To displace
 *  an exhausted address, half of `callers` must exhaust their quota within its window: 30 million requests in a minute for
 *  100 000 clients of 600 requests. */
export function addressWindows(span: number, callers: number): Windows {
	const memory = () => twoGenerations<Window>({ room: callers, weightOf: () => 1, span });
	const active = memory(); // with quota left
	const exhausted = memory();
	return {
		at: (id, now) => currentWindow(active.get(id, now) ?? exhausted.get(id, now), span, now),
		use(id, window, requests, now) {
			const isNew = window.used === 0;
			window.used += 1;
			if (window.used >= requests) {
				active.drop(id);
				exhausted.put(id, window, now);
			} else if (isNew) active.put(id, window, now);
		},
	};
}

const currentWindow = (window: Window | undefined, span: number, now: number): Window =>
	window !== undefined && window.ends > now ? window : { ends: now + span, used: 0 };
