export type Headers = Readonly<Record<string, string>>;

/** The headers of every answer, errors and 304 included. A new object each time, for its own headers to be put into. */
export const sharedHeaders = (requestId: string): Record<string, string> => ({
	"Access-Control-Allow-Origin": "*",
	"Access-Control-Expose-Headers": "*", // stands for every name, as answers to all origins carry no credentials
	"X-Content-Type-Options": "nosniff",
	"X-Request-Id": requestId,
});

/** Beside the type, what a browser may show or embed as a thing of its own carries: a chart, a table, a file. JSON, which is
 *  only ever read by code, goes without. */
export const EMBEDDED: Headers = {
	"Content-Security-Policy": "default-src 'none'; frame-ancestors 'none'",
	"Cross-Origin-Resource-Policy": "cross-origin", // else no page of another site could show a chart
	"Referrer-Policy": "no-referrer",
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
const encoder = new TextEncoder();
const BASIS = 0x811c9dc5;

/** A strong entity tag: two 32-bit FNV-1a hashes, one of the content's even bytes and one of the odd, and its
 *  length. It guards a cache against an old text, not against a forger, so it need not be cryptographic; and it costs less
 *  than asking for a hash that is. */
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

/** Whether an If-None-Match header names a tag (weakly compared, as RFC 9110 has it). */
export function etagMatches(ifNoneMatch: string | undefined, tag: string): boolean {
	if (ifNoneMatch === undefined) return false;
	return ifNoneMatch.split(",").some((entry) => ["*", tag].includes(entry.trim().replace(/^W\//, "")));
}
