export type Headers = Readonly<Record<string, string>>;

/** The headers of every response, including errors and 304. A new object each time, to which others are added. */
export const sharedHeaders = (requestId: string): Record<string, string> => ({
	"Access-Control-Allow-Origin": "*",
	"Access-Control-Expose-Headers": "*", // every name, as responses to all origins carry no credentials
	"X-Content-Type-Options": "nosniff",
	"X-Request-Id": requestId,
});

/** Headers of responses that a browser can show or embed: charts, tables, files. JSON, which only code reads, has none. */
export const EMBEDDED: Headers = {
	"Content-Security-Policy": "default-src 'none'; frame-ancestors 'none'",
	"Cross-Origin-Resource-Policy": "cross-origin", // lets pages of other sites show a chart
	"Referrer-Policy": "no-referrer",
};

export const PREFLIGHT_HEADERS: Headers = {
	"Access-Control-Allow-Headers": "Accept, Content-Type, If-None-Match, X-Api-Key, X-Request-Id",
	"Access-Control-Max-Age": "86400",
};

const REQUEST_ID = /^[\w.:-]{1,128}$/;

/** The client's request id if it is well formed, else a new one. */
export function requestIdFrom(sent: string | undefined): string {
	return sent !== undefined && REQUEST_ID.test(sent) ? sent : crypto.randomUUID();
}

const PRIME = 0x01000193; // of FNV-1a in 32 bits
const encoder = new TextEncoder();
const BASIS = 0x811c9dc5;

/** A strong entity tag: two 32-bit FNV-1a hashes, one of the content's even bytes and one of the odd, and its
 *  length. It detects stale cache entries, not forgery, so it need not be cryptographic, and it costs less than a
 *  cryptographic hash. */
export function entityTag(content: string | Uint8Array): string {
	const bytes = typeof content === "string" ? encoder.encode(content) : content;
	const { length } = bytes;
	let even = BASIS;
	let odd = BASIS;
	for (let i = 0; i + 1 < length; i += 2) {
		even = Math.imul(even ^ bytes[i]!, PRIME);
		odd = Math.imul(odd ^ bytes[i + 1]!, PRIME);
	}
	if (length % 2 === 1) even = Math.imul(even ^ bytes[length - 1]!, PRIME);
	const hex = (x: number) => (x >>> 0).toString(16);
	return `"${hex(even)}-${hex(odd)}-${length.toString(16)}"`;
}

/** Whether an If-None-Match header matches a tag (weak comparison, RFC 9110). */
export function etagMatches(ifNoneMatch: string | undefined, tag: string): boolean {
	if (ifNoneMatch === undefined) return false;
	return ifNoneMatch.split(",").some((entry) => ["*", tag].includes(entry.trim().replace(/^W\//, "")));
}
