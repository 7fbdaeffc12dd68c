import { after, type Maybe } from "../operations/maybe.ts";
import { entityTag, etagMatches, type Headers } from "./headers.ts";
import { acceptsGzip, cacheControl, type EdgeContext, reply } from "./reply.ts";

const GZIP_MINIMUM = 2048; // [characters] a shorter text fits into a packet or two anyway

type Bytes = Uint8Array<ArrayBuffer>;

/** Compresses a text with gzip. */
export type Pack = (text: string) => Promise<Bytes>;

/** A text, with its entity tag where it may be cached. */
export interface Tagged {
	readonly text: string;
	readonly tag: string | undefined;
}

/** Sends a text: tagged if it may be cached, compressed if the client accepts gzip and no proxy compresses.
 *  @param caching  its Cache-Control
 *  @param type     headers of its media type */
export function sendText(
	c: EdgeContext,
	{ text, tag }: Tagged,
	caching: string,
	type: Headers,
	pack: Pack | undefined,
): Maybe<Response> {
	const varies = pack !== undefined && text.length >= GZIP_MINIMUM;
	const packed = varies && acceptsGzip(c);
	const shown: Representation = { type, caching, tag: packed && tag ? packedTag(tag) : tag, packed, varies };
	return sendTagged(c, shown, () => (packed ? pack(text) : text));
}

/** A text with the entity tag of its content. */
export const taggedText = (text: string): Tagged => ({ text, tag: entityTag(text) });

const packedTag = (tag: string): string => `${tag.slice(0, -1)}-gzip"`;

interface Representation {
	readonly type: Headers;
	readonly caching: string;
	readonly tag: string | undefined;
	readonly packed: boolean;
	readonly varies: boolean; // whether other clients may get it with another encoding
}

/** Sends a body with its tag, or 304 to a client that has it. */
function sendTagged(
	c: EdgeContext,
	{ type, caching, tag, packed, varies }: Representation,
	body: () => Maybe<string | Bytes>,
): Maybe<Response> {
	const headers: Record<string, string> = { "Cache-Control": caching };
	if (tag !== undefined) headers.ETag = tag;
	if (varies) headers.Vary = type.Vary ? `${type.Vary}, Accept-Encoding` : "Accept-Encoding";
	else if (type.Vary) headers.Vary = type.Vary;
	if (tag !== undefined && etagMatches(c.req.header("if-none-match"), tag))
		return reply(c, null, 304, headers);
	for (const name in type) headers[name] ??= type[name]!;
	if (packed) headers["Content-Encoding"] = "gzip";
	return after(body(), (content) => reply(c, content, 200, headers));
}

/** Constant bytes, uncompressed and compressed. */
export interface StaticContent {
	readonly bytes: Bytes;
	readonly gzipped: Bytes;
}

/** Sends constant bytes, compressed for clients that accept it. They are read and tagged at the first request, as most deployments
 *  serve few of them.
 *  @param read    reads them
 *  @param maxAge  time for which they may be cached [s]
 *  @param type    headers of their media type */
export function staticResponder(
	read: () => StaticContent,
	maxAge: number,
	type: Headers,
): (c: EdgeContext) => Maybe<Response> {
	const caching = cacheControl(maxAge, "public");
	let held: (StaticContent & { readonly tag: string }) | undefined;
	return (c) => {
		if (!held) {
			const content = read();
			held = { ...content, tag: entityTag(content.bytes) };
		}
		const { bytes, gzipped, tag } = held;
		const packed = acceptsGzip(c);
		const shown: Representation = { type, caching, tag: packed ? packedTag(tag) : tag, packed, varies: true };
		return sendTagged(c, shown, () => (packed ? gzipped : bytes));
	};
}
