import { twoGenerations } from "../compute/two-generation-cache.ts";

/** A stretch of time that begins with a caller's first request, and how many have come in it. */
export interface Window {
	readonly ends: number; // [ms]
	used: number;
}

/** The windows of many callers, each as long as the others. */
export interface Windows {
	/** The window of a caller that runs at a time [ms], else one that would begin then. */
	at(id: string, now: number): Window;
	/** Counts a request in the window that `at` gave; `requests` of them use it up. */
	use(id: string, window: Window, requests: number, now: number): void;
}

/** Windows of keys: all of them are kept, as there are no more than the keys file has. */
export function keyWindows(span: number): Windows {
	const windows = new Map<string, Window>();
	return {
		at: (id, now) => running(windows.get(id), span, now),
		use(id, window) {
			window.used += 1;
			windows.set(id, window);
		},
	};
}

/** Windows of addresses, of which anyone can bring new ones, so `callers` of them are kept at most, and as many again of those
 *  with nothing left.
 *
 *  What a flood of addresses gains: the two sorts are kept apart, so new addresses push out only callers that had something
 *  left, whose count then begins anew: one more quota for each `callers`/2 addresses, which could have sent far more
 *  themselves. To have an address forgotten that has nothing left, half of `callers` must use up their whole quota within
 *  its window: 30 million requests in a minute where there are 100 000 callers of 600 requests. */
export function addressWindows(span: number, callers: number): Windows {
	const memory = () => twoGenerations<Window>({ room: callers, weightOf: () => 1, span });
	const some = memory(); // with something left
	const none = memory(); // with nothing left
	return {
		at: (id, now) => running(some.get(id, now) ?? none.get(id, now), span, now),
		use(id, window, requests, now) {
			const isNew = window.used === 0;
			window.used += 1;
			if (window.used >= requests) {
				some.drop(id);
				none.put(id, window, now);
			} else if (isNew) some.put(id, window, now);
		},
	};
}

const running = (window: Window | undefined, span: number, now: number): Window =>
	window !== undefined && window.ends > now ? window : { ends: now + span, used: 0 };
