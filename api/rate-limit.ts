import { ProblemError } from "./problem.ts";

/** How many requests one caller may send within a window; counted in memory, so per instance. */
export interface RatePolicy {
	readonly requests: number;
	readonly windowS: number;
	/** Callers remembered at most; the one whose window began first is forgotten first. */
	readonly callers: number;
}

type Fields = Readonly<Record<"RateLimit" | "RateLimit-Policy", string>>;

/** Counts a request of a caller at a time [ms]: the fields that tell what is left (draft-ietf-httpapi-ratelimit-headers),
 *  or a problem once nothing is. A window begins with a caller's first request. */
export function rateLimit({ requests, windowS, callers }: RatePolicy) {
	const windows = new Map<string, { readonly ends: number; used: number }>(); // in the order in which they end
	const policy = `"default";q=${requests};w=${windowS}`;
	return (caller: string, now: number): Fields => {
		let window = windows.get(caller);
		if (window === undefined || window.ends <= now) {
			windows.delete(caller);
			if (windows.size >= callers) windows.delete(windows.keys().next().value!);
			window = { ends: now + windowS * 1000, used: 0 };
			windows.set(caller, window);
		}
		const wait = Math.ceil((window.ends - now) / 1000);
		const left = requests - window.used;
		const fields = {
			RateLimit: `"default";r=${Math.max(0, left - 1)};t=${wait}`,
			"RateLimit-Policy": policy,
		};
		if (left <= 0)
			throw new ProblemError(
				"too-many-requests",
				`${requests} requests in ${windowS} s are allowed; try again in ${wait} s`,
				[],
				{ ...fields, "Retry-After": String(wait) },
			);
		window.used += 1;
		return fields;
	};
}
