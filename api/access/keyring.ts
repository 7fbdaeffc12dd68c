import { ProblemError } from "../problem/problem.ts";
import { digestOf, isKey, type Key } from "./keys.ts";

/** What a 401 asks for (RFC 9110, 11.6.1). No registered scheme has a header of its own for its credentials, so this one names it;
 *  browsers know no such scheme and ask nobody for a password. */
const CHALLENGE = { "WWW-Authenticate": 'ApiKey realm="raykettle", header="X-Api-Key"' };

/** Where a key is needed and none came. */
export const keyMissing = () =>
	new ProblemError(
		"unauthorized",
		"This deployment answers those who send a key in X-Api-Key",
		[],
		CHALLENGE,
	);

/** Finds the key that a caller presents, or throws a problem that says why it does not open anything; no text repeats the key.
 *  What origin the asking page may have, undefined where no page asks, decides whether a key may be used there. */
export function keyring(keys: readonly Key[]) {
	const digests = keys.map(({ sha256 }) => bytesOf(sha256));
	return async (presented: string, origins: readonly string[] | undefined): Promise<Key> => {
		if (!isKey(presented)) throw unauthorized(MALFORMED);
		const key = keys[placeOf(await digestOf(presented), digests)];
		if (key === undefined || !presented.startsWith(`rk_${key.kind}_`)) throw unauthorized(UNKNOWN);
		refuseElsewhere(key, origins);
		return key;
	};
}

const MALFORMED =
	"X-Api-Key holds no key: one reads rk_secret_ or rk_publishable_ and 43 characters; was it cut, or sent twice?";
const UNKNOWN = "This key is not known here: it was mistyped, revoked or made for another deployment";

const unauthorized = (detail: string) => new ProblemError("unauthorized", detail, [], CHALLENGE);

function refuseElsewhere({ kind, origins: own }: Key, origins: readonly string[] | undefined): void {
	if (kind === "secret" && origins !== undefined)
		throw new ProblemError(
			"forbidden",
			"This secret key came with an Origin or a Sec-Fetch-Site, as browsers send them, so whoever opens that page can read the key: revoke it, and use a publishable key in pages. A server that passes a browser's request on must leave both out",
		);
	if (kind === "secret" || origins?.some((origin) => own.includes(origin))) return;
	const where =
		origins === undefined
			? "this request names no origin; a server needs a secret key"
			: origins[0] === "null"
				? "this page has none, as files and sandboxed frames have none"
				: "this page is of another; scheme, host and port must be the same";
	throw new ProblemError("forbidden", `This publishable key works on pages of its own origins: ${where}`);
}

/** The place of the digest that equals another, or -1. Every byte of every digest is looked at and nothing branches on what
 *  it is, so the time taken tells neither whether one equals it, nor which, nor how far another agrees. */
export function placeOf(sought: ArrayLike<number>, among: readonly ArrayLike<number>[]): number {
	let place = -1;
	for (let i = 0; i < among.length; i++) {
		let difference = 0;
		for (let at = 0; at < DIGEST_BYTES; at++) difference |= sought[at]! ^ among[i]![at]!;
		const equal = (difference - 1) >> 31; // all bits set where there is no difference, else none
		place = (place & ~equal) | (i & equal);
	}
	return place;
}

const DIGEST_BYTES = 32;

function bytesOf(hex: string): Uint8Array {
	return Uint8Array.from({ length: DIGEST_BYTES }, (_, i) =>
		Number.parseInt(hex.slice(2 * i, 2 * i + 2), 16),
	);
}
