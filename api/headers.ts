/** Headers of every answer, errors and 304 included. Set before a handler runs: setting them after costs far more. */
export const STATIC_HEADERS: readonly (readonly [name: string, value: string])[] = [
	["Access-Control-Allow-Origin", "*"],
	[
		"Access-Control-Expose-Headers",
		"ETag, Retry-After, X-Request-Id, RateLimit, RateLimit-Policy, Allow, Content-Language",
	],
	["Cross-Origin-Resource-Policy", "cross-origin"],
	["X-Content-Type-Options", "nosniff"],
	["Referrer-Policy", "no-referrer"],
	["Vary", "Accept"],
];

export const PREFLIGHT_HEADERS: readonly (readonly [name: string, value: string])[] = [
	[
		"Access-Control-Allow-Headers",
		"Accept, Authorization, Content-Type, If-None-Match, X-Api-Key, X-Request-Id",
	],
	["Access-Control-Max-Age", "86400"],
];

const REQUEST_ID = /^[\w.:-]{1,128}$/;

/** The caller's own request id where it is a plain one, else a new one. */
export function requestIdFrom(given: string | undefined): string {
	return given !== undefined && REQUEST_ID.test(given) ? given : crypto.randomUUID();
}

/** A strong entity tag: the first half of the content's SHA-256. */
export async function entityTag(content: string | Uint8Array<ArrayBuffer>): Promise<string> {
	const bytes = typeof content === "string" ? new TextEncoder().encode(content) : content;
	const digest = await crypto.subtle.digest("SHA-256", bytes);
	return `"${Array.from(new Uint8Array(digest, 0, 16), (byte) => byte.toString(16).padStart(2, "0")).join("")}"`;
}

/** Whether an If-None-Match header names a tag (weakly compared, as RFC 9110 has it). */
export function matches(ifNoneMatch: string | undefined, tag: string): boolean {
	if (ifNoneMatch === undefined) return false;
	return ifNoneMatch.split(",").some((entry) => ["*", tag].includes(entry.trim().replace(/^W\//, "")));
}
