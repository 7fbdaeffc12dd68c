export type Headers = Readonly<Record<string, string>>;

/** Headers of every answer, errors and 304 included; an answer's own headers come after and may replace one. */
export const STATIC_HEADERS: Headers = {
	"Access-Control-Allow-Origin": "*",
	"Access-Control-Expose-Headers":
		"ETag, Retry-After, X-Request-Id, RateLimit, RateLimit-Policy, Allow, Content-Language, WWW-Authenticate",
	"Content-Security-Policy": "default-src 'none'; frame-ancestors 'none'",
	"Cross-Origin-Resource-Policy": "cross-origin",
	"Referrer-Policy": "no-referrer",
	Vary: "Accept",
	"X-Content-Type-Options": "nosniff",
};

export const PREFLIGHT_HEADERS: Headers = {
	"Access-Control-Allow-Headers": "Accept, Content-Type, If-None-Match, X-Api-Key, X-Request-Id",
	"Access-Control-Max-Age": "86400",
};

const REQUEST_ID = /^[\w.:-]{1,128}$/;

/** The caller's own request id where it is a plain one, else a new one. */
export function requestIdFrom(given: string | undefined): string {
	return given !== undefined && REQUEST_ID.test(given) ? given : crypto.randomUUID();
}

const PRIME = 0x01000193; // of FNV-1a in 32 bits
const SEEDS = [0x811c9dc5, 0x9747b28c] as const; // its offset basis, and another for a second, independent half

/** A strong entity tag: two 32-bit FNV-1a hashes of the content, and its length. It guards a cache against an old text, not
 *  against a forger, so it need not be cryptographic; and at some nanoseconds a byte it costs less than asking for one. */
export function entityTag(content: string | Uint8Array): string {
	let [a, b]: [number, number] = [...SEEDS];
	const text = typeof content === "string";
	for (let i = 0; i < content.length; i += 1) {
		const unit = text ? content.charCodeAt(i) : content[i]!;
		a = Math.imul(a ^ unit, PRIME);
		b = Math.imul(b ^ unit, PRIME) + 1;
	}
	const hex = (x: number) => (x >>> 0).toString(16).padStart(8, "0");
	return `"${hex(a)}${hex(b)}-${content.length.toString(36)}"`;
}

/** Whether an If-None-Match header names a tag (weakly compared, as RFC 9110 has it). */
export function matches(ifNoneMatch: string | undefined, tag: string): boolean {
	if (ifNoneMatch === undefined) return false;
	return ifNoneMatch.split(",").some((entry) => ["*", tag].includes(entry.trim().replace(/^W\//, "")));
}
