import { EMBEDDED, type Headers } from "./headers.ts";
import { type StaticContent, staticResponder } from "./send.ts";

/** A file for browsers: a page, a script, a style sheet. */
export interface Asset {
	readonly path: string;
	readonly type: string;
	readonly read: () => StaticContent;
	readonly maxAge: number; // time for which it may be cached [s]
}

/** Content security policy of the service's pages: their own files and their own service, nothing else. */
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

/** Sends a file, compressed for clients that accept it, or 304 to a client that has it. */
export const assetHandler = ({ read, maxAge, type }: Asset) =>
	staticResponder(read, maxAge, fileHeaders(type));

/** The headers of a media type; pages have a policy of their own. */
export const fileHeaders = (type: string): Headers => ({
	...EMBEDDED,
	...(type.startsWith("text/html") && { "Content-Security-Policy": PAGE_POLICY }),
	"Content-Type": type,
});
