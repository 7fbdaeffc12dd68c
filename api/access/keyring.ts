import { ProblemError } from "../problem/problem.ts";
import { digestOf, hexOf, isKey, type Key } from "./keys.ts";

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
 *  What origin the asking page may have, undefined where no page asks, decides whether a key may be used there.
 *  The time of the look-up depends on the digest alone, and nobody can choose a key by its SHA-256: so it reveals nothing that
 *  helps to guess one, and 10 000 keys cost no more than one. */
export function keyring(keys: readonly Key[]) {
	const byDigest = new Map(keys.map((key) => [key.sha256, key]));
	return async (presented: string, origins: readonly string[] | undefined): Promise<Key> => {
		if (!isKey(presented)) throw unauthorized(MALFORMED);
		const key = byDigest.get(hexOf(await digestOf(presented)));
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
