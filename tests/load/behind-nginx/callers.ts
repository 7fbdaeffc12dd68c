import type { Bound } from "../table.ts";
import { ask, type Question } from "./ask.ts";
import type { Front } from "./proxied.ts";

const light = (from: string, headers: Question["headers"] = {}): Question => {
	return { name: "light", method: "GET", path: "/v1/boiling-point?elevationM=2350", from, headers };
};

const [GREEDY, MODEST] = ["127.0.0.2", "127.0.0.3"];

/** Whom the service takes a caller for, seen through nginx by instances with TRUSTED_PROXIES=1.
 *  @param quota  RATE_REQUESTS of each instance */
export async function callers(proxy: Front, instances: number, quota: number): Promise<readonly Bound[]> {
	const own = await ask(proxy.port, light(MODEST, { "X-Request-Id": "mine.1:a-b_c" }));
	const odd = await ask(proxy.port, light(MODEST, { "X-Request-Id": 'a "b"' }));
	const statuses: number[] = [];
	for (let i = 0; i < instances * quota + 1; i++)
		statuses.push((await ask(proxy.port, light(GREEDY))).status);
	const answered = statuses.filter((status) => status === 200).length;
	const spent = await ask(proxy.port, light(GREEDY));
	const forged: number[] = [];
	for (const forgery of ["203.0.113.7", "203.0.113.8, 203.0.113.9", MODEST])
		forged.push((await ask(proxy.port, light(GREEDY, { "X-Forwarded-For": forgery }))).status);
	const modest = await ask(proxy.port, light(MODEST, { "X-Forwarded-For": GREEDY }));
	return [
		{
			name: "a request id comes out as it went in, and a new one for one that is no plain id",
			holds: own.headers["x-request-id"] === "mine.1:a-b_c" && /^[\w-]{32,}$/.test(idOf(odd.headers)),
			found: `${idOf(own.headers)}; ${idOf(odd.headers)}`,
		},
		{
			name: "the rate limit counts by the address that nginx was asked from, in each instance",
			holds: answered <= instances * quota && answered >= quota && spent.status === 429,
			found: `${answered} answered of ${statuses.length} (each of ${instances} instances allows ${quota}), then ${spent.status}`,
		},
		{
			name: "and tells what is left, through nginx",
			holds: ["ratelimit", "ratelimit-policy", "retry-after"].every((name) => name in spent.headers),
			found: String(spent.headers.ratelimit),
		},
		{
			name: "an X-Forwarded-For that a caller forged neither frees him nor harms another",
			holds: forged.every((status) => status === 429) && modest.status === 200,
			found: `${forged.join(", ")}; the other ${modest.status}`,
		},
	];
}

const idOf = (headers: Readonly<Record<string, unknown>>): string => String(headers["x-request-id"]);
