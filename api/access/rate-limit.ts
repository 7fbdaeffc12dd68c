import { ProblemError } from "../problem/problem.ts";
import type { Key } from "./keys.ts";
import { addressWindows, keyWindows, type Window, type Windows } from "./rate-windows.ts";

/** Number of requests a client may send within a window; counted in memory, so per instance. */
export interface RatePolicy {
	readonly requests: number; // per address, or per secret key without its own quota; 0 for no limit
	readonly windowS: number;
	readonly callers: number; // addresses kept at most, and as many again with an exhausted quota
}

export interface Client {
	readonly address: string; // see `addressBlock`
	readonly key: Key | undefined;
}

/** A quota that a request counts against, with its window. */
interface Count {
	readonly policy: "default" | "key"; // the deployment's quota, or the key's own
	readonly holder: "address" | "key";
	readonly id: string;
	readonly requests: number;
	readonly windows: Windows;
	readonly window: Window;
}

type Fields = Readonly<Record<string, string>>;

/** Counts a request of a client at a time [ms]. Returns the header fields with the remaining quota
 *  (draft-ietf-httpapi-ratelimit-headers-11), none without a limit; throws a problem once a quota is exhausted. Refused requests
 *  do not count.
 *
 *  A secret key counts as one client at any address. A publishable key is public, so its visitors count by address; its own quota
 *  limits them together. Windows start with each client's first request, so clients do not all return at the same moment. A client
 *  that uses one window late and the next early sends two quotas in a short time. */
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
	return (client: Client, now: number): Fields => {
		const counts = countsOf(client, now);
		if (counts.some(isExhausted)) throw refusal(counts, windowS, now);
		for (const { windows, id, window, requests } of counts) windows.use(id, window, requests, now);
		return fieldsOf(counts, windowS, now);
	};
}

const isExhausted = ({ requests, window }: Count) => window.used >= requests;
const waitOf = ({ window }: Count, now: number) => Math.ceil((window.ends - now) / 1000); // [s] rounded up, so that the window has ended by then

function fieldsOf(counts: readonly Count[], windowS: number, now: number): Fields {
	if (counts.length === 0) return {};
	const left = counts.map((count) => {
		const { policy, requests, window } = count;
		return `"${policy}";r=${requests - window.used};t=${waitOf(count, now)}`;
	});
	const policies = counts.map(({ policy, requests }) => `"${policy}";q=${requests};w=${windowS}`);
	return { RateLimit: left.join(", "), "RateLimit-Policy": policies.join(", ") };
}

/** The refusal for the exhausted quota whose window ends last. */
function refusal(counts: readonly Count[], windowS: number, now: number): ProblemError {
	const last = counts.filter(isExhausted).reduce((a, b) => (b.window.ends > a.window.ends ? b : a));
	const wait = waitOf(last, now);
	const detail = `This ${last.holder} may send ${last.requests} requests in ${windowS} s; try again in ${wait} s`;
	const headers = { ...fieldsOf(counts, windowS, now), "Retry-After": String(wait) };
	return new ProblemError("too-many-requests", detail, [], headers);
}
