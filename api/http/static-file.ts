import { EMBEDDED, type Headers } from "./headers.ts";
import { type StaticContent, staticResponder } from "./send.ts";

/** A file for browsers: a page, a script, a style sheet. */
export interface Asset {
	readonly path: string;
	readonly type: string;
	readonly read: () => StaticContent;
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
export const assetHandler = ({ read, maxAge, type }: Asset) =>
	staticResponder(read, maxAge, fileHeaders(type));

/** The headers of a type: a page of ours may do more than what stands alone. */
export const fileHeaders = (type: string): Headers => ({
	...EMBEDDED,
	...(type.startsWith("text/html") && { "Content-Security-Policy": PAGE_POLICY }),
	"Content-Type": type,
});
