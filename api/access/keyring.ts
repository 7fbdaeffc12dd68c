import { ProblemError } from "../problem/problem.ts";
import { digestOf, hexOf, isKey, type Key } from "./keys.ts";

/** Challenge of a 401 (RFC 9110, 11.6.1). No registered scheme uses a header of its own for credentials, so this one names it;
 *  browsers do not know the scheme and show no password dialog. */
const CHALLENGE = { "WWW-Authenticate": 'ApiKey realm="raykettle", header="X-Api-Key"' };

/** The problem of a request without a key where one is required. */
export const keyMissing = () =>
	new ProblemError(
		"unauthorized",
		"This deployment requires an API key in the X-Api-Key header",
		[],
		CHALLENGE,
	);

/** Looks up the key of a request, or throws a problem that states why it is refused; no text repeats the key.
 *  The possible origins of the requesting page, undefined where there is no page, decide whether the key may be used.
 *  The time of the look-up depends on the digest alone, and nobody can choose a key by its SHA-256: so it reveals nothing that
 *  helps to guess one, and 10 000 keys cost no more than one. */
export function keyring(keys: readonly Key[]) {
	const byDigest = new Map(keys.map((key) => [key.sha256, key]));
	return async (presented: string, origins: readonly string[] | undefined): Promise<Key> => {
		if (!isKey(presented)) throw unauthorized(MALFORMED);
		const key = byDigest.get(hexOf(await digestOf(presented)));
		if (key === undefined || !presented.startsWith(`rk_${key.kind}_`)) throw unauthorized(UNKNOWN);
		refuseOtherOrigins(key, origins);
		return key;
	};
}

const MALFORMED =
	"X-Api-Key is not a valid key: a key is rk_secret_ or rk_publishable_ followed by 43 characters. Check that it is complete and sent once";
const UNKNOWN = "This key is unknown: it was mistyped, revoked or created for another deployment";

const unauthorized = (detail: string) => new ProblemError("unauthorized", detail, [], CHALLENGE);

function refuseOtherOrigins({ kind, origins: own }: Key, origins: readonly string[] | undefined): void {
	if (kind === "secret" && origins !== undefined)
		throw new ProblemError(
			"forbidden",
			"This secret key was sent with Origin or Sec-Fetch-Site, as browsers do, so anyone who opens that page can read it. Revoke it, and use a publishable key in pages. A server that forwards a browser's request must remove both headers",
		);
	if (kind === "secret" || origins?.some((origin) => own.includes(origin))) return;
	const where =
		origins === undefined
			? "this request has no origin; use a secret key on a server"
			: origins[0] === "null"
				? "this page has no origin, as files and sandboxed frames do"
				: "this page has another origin; scheme, host and port must match";
	throw new ProblemError(
		"forbidden",
		`This publishable key works only on pages of its own origins: ${where}`,
	);
}
