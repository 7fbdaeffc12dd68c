import type { Settings } from "../config/settings.ts";
import type { Admit } from "../http/app-options.ts";
import type { EdgeContext } from "../http/reply.ts";
import { after, type Maybe } from "../operations/maybe.ts";
import { browserOrigins } from "./browser-origin.ts";
import { addressBlock } from "./client-address.ts";
import { keyMissing, keyring } from "./keyring.ts";
import type { Key } from "./keys.ts";
import { rateLimit } from "./rate-limit.ts";

const CALLERS = 100_000; // addresses kept at most: about ten megabytes

export interface AccessOptions {
	readonly settings: Pick<Settings, "rateRequests" | "rateWindow">;
	readonly keys: readonly Key[];
	readonly keysRequired: boolean;
	readonly addressOf: (c: EdgeContext) => string;
}

/** Admits requests with a valid key or, unless keys are required, any request; each within the rate limit. */
export function accessControl({ settings, keys, keysRequired, addressOf }: AccessOptions): Admit {
	const find = keyring(keys);
	const { rateRequests: requests, rateWindow: windowS } = settings;
	const count = rateLimit({ requests, windowS, callers: CALLERS });
	/** The key of a request. An invalid key counts against the sender's address, which limits guessing. */
	const keyOf = (c: EdgeContext, address: string): Maybe<Key | undefined> => {
		const presented = c.req.header("x-api-key");
		if (presented !== undefined && keys.length > 0)
			return find(
				presented,
				browserOrigins((name) => c.req.header(name)),
			).catch((problem: unknown) => {
				count({ address, key: undefined }, performance.now());
				throw problem;
			});
		if (keysRequired) throw keyMissing();
		return undefined;
	};
	const admit = (c: EdgeContext) => {
		const address = addressBlock(addressOf(c));
		return after(keyOf(c, address), (key) => count({ address, key }, performance.now()));
	};
	return Object.assign(admit, { keysRequired });
}
