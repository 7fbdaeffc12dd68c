import { ProblemError } from "../problem/problem.ts";
import type { Key } from "./keys.ts";
import { addressWindows, keyWindows, type Window, type Windows } from "./rate-windows.ts";

/** How many requests a caller may send within a window; counted in memory, so per instance. */
export interface RatePolicy {
	readonly requests: number; // of an address, or of a secret key without a quota of its own; 0 for no limit
	readonly windowS: number;
	readonly callers: number; // addresses remembered at most, and as many again of those that have nothing left
}

export interface Client {
	readonly address: string; // see `addressBlock`
	readonly key: Key | undefined;
}

/** A quota that a request counts against, and the window in which it does. */
interface Count {
	readonly policy: "default" | "key"; // the deployment's, or the key's own
	readonly holder: "address" | "key";
	readonly id: string;
	readonly requests: number;
	readonly windows: Windows;
	readonly window: Window;
}

type Fields = Readonly<Record<string, string>>;

/** Counts a request of a caller at a time [ms]: the fields that tell what is left (draft-ietf-httpapi-ratelimit-headers-11),
 *  none where there is no limit, or a problem once a quota is used up; what is refused counts against nobody.
 *
 *  A secret key counts by itself, wherever it comes from. A publishable key is in everybody's hands, so its visitors count by
 *  address; a quota of its own caps them all together. Windows begin with each caller's first request, so callers do not all
 *  come back at one moment; whoever uses one window late and the next early sends two quotas in a short time. */
export function rateLimit({ requests, windowS, callers }: RatePolicy) {
	const addresses = addressWindows(windowS * 1000, callers);
	const keys = keyWindows(windowS * 1000);

	function countsOf({ address, key }: Client, now: number): readonly Count[] {
		const byKey = (policy: Count["policy"], { id }: Key, requests: number): Count => {
			return { policy, holder: "key", id, requests, windows: keys, window: keys.at(id, now) };
		};
		const own = key?.requests === undefined ? [] : [byKey("key", key, key.requests)];
		if (requests === 0 || (key?.kind === "secret" && own.length > 0)) return own;
		if (key?.kind === "secret") return [byKey("default", key, requests)];
		const window = addresses.at(address, now);
		own.push({ policy: "default", holder: "address", id: address, requests, windows: addresses, window });
		return own;
	}
	return (caller: Client, now: number): Fields => {
		const counts = countsOf(caller, now);
		if (counts.some(isSpent)) throw refusal(counts, windowS, now);
		for (const { windows, id, window, requests } of counts) windows.use(id, window, requests, now);
		return fieldsOf(counts, windowS, now);
	};
}

const isSpent = ({ requests, window }: Count) => window.used >= requests;
const waitOf = ({ window }: Count, now: number) => Math.ceil((window.ends - now) / 1000); // [s] up, so that it is over by then

function fieldsOf(counts: readonly Count[], windowS: number, now: number): Fields {
	if (counts.length === 0) return {};
	const left = counts.map((count) => {
		const { policy, requests, window } = count;
		return `"${policy}";r=${requests - window.used};t=${waitOf(count, now)}`;
	});
	const policies = counts.map(({ policy, requests }) => `"${policy}";q=${requests};w=${windowS}`);
	return { RateLimit: left.join(", "), "RateLimit-Policy": policies.join(", ") };
}

/** The refusal of the quota that stays used up the longest. */
function refusal(counts: readonly Count[], windowS: number, now: number): ProblemError {
	const last = counts.filter(isSpent).reduce((a, b) => (b.window.ends > a.window.ends ? b : a));
	const wait = waitOf(last, now);
	const detail = `This ${last.holder} may send ${last.requests} requests in ${windowS} s; try again in ${wait} s`;
	const headers = { ...fieldsOf(counts, windowS, now), "Retry-After": String(wait) };
	return new ProblemError("too-many-requests", detail, [], headers);
}
