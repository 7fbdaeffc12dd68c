import { entityTag, matches } from "./headers.ts";
import type { EdgeContext } from "./respond.ts";

/** A file for browsers: a page, a script, a style sheet. */
export interface Asset {
	readonly path: string;
	readonly type: string;
	readonly bytes: Uint8Array<ArrayBuffer>;
	readonly gzipped: Uint8Array<ArrayBuffer>;
	readonly maxAge: number; // how long it may be kept unasked [s]
}

/** What a page of ours may do: run its own files, talk to its own service, and nothing else. */
export const PAGE_POLICY = [
	"default-src 'none'",
	"script-src 'self'",
	"style-src 'self'",
	"img-src 'self' data:",
	"connect-src 'self'",
	"base-uri 'none'",
	"form-action 'none'",
	"frame-ancestors 'none'",
].join("; ");

/** Answers with a file, packed for whoever takes it so; 304 to a caller who holds it already. */
export function assetHandler(asset: Asset): (c: EdgeContext) => Promise<Response> {
	const tag = entityTag(asset.bytes);
	return async (c) => {
		const packed = /\bgzip\b(?!\s*;\s*q=0(?:\.0*)?(?:,|$))/.test(c.req.header("accept-encoding") ?? "");
		const own = packed ? `${(await tag).slice(0, -1)}-gzip"` : await tag;
		const headers = {
			ETag: own,
			"Cache-Control": `public, max-age=${asset.maxAge}`,
			Vary: "Accept, Accept-Encoding",
			...(asset.type.startsWith("text/html") && { "Content-Security-Policy": PAGE_POLICY }),
		};
		if (matches(c.req.header("if-none-match"), own)) return c.body(null, 304, headers);
		return c.body(packed ? asset.gzipped : asset.bytes, 200, {
			...headers,
			"Content-Type": asset.type,
			...(packed && { "Content-Encoding": "gzip" }),
		});
	};
}
