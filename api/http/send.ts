import { after, type Maybe } from "../operations/maybe.ts";
import { entityTag, etagMatches, type Headers } from "./headers.ts";
import { acceptsGzip, cacheControl, type EdgeContext, reply } from "./reply.ts";

const WORTH_PACKING = 2048; // [characters] a shorter text fits into a packet or two anyway

type Bytes = Uint8Array<ArrayBuffer>;

/** Packs a text with gzip. */
export type Pack = (text: string) => Promise<Bytes>;

/** A text, and its tag where it may be kept. */
export interface Tagged {
	readonly text: string;
	readonly tag: string | undefined;
}

/** A text as the answer: tagged where it may be kept, packed where the caller takes it so and nothing in front packs.
 *  @param kept  whose cache may keep it, and how long; see `keeping`
 *  @param type  headers that go with its type */
export function sendText(
	c: EdgeContext,
	{ text, tag }: Tagged,
	kept: string,
	type: Headers,
	pack: Pack | undefined,
): Maybe<Response> {
	const varies = pack !== undefined && text.length >= WORTH_PACKING;
	const packed = varies && acceptsGzip(c);
	const shown: Representation = { type, kept, tag: packed && tag ? packedTag(tag) : tag, packed, varies };
	return sendTagged(c, shown, () => (packed ? pack(text) : text));
}

/** A text under the tag of its content. */
export const taggedText = (text: string): Tagged => ({ text, tag: entityTag(text) });

const packedTag = (tag: string): string => `${tag.slice(0, -1)}-gzip"`;

interface Representation {
	readonly type: Headers;
	readonly kept: string;
	readonly tag: string | undefined;
	readonly packed: boolean;
	readonly varies: boolean; // whether others may get it packed, or not
}

/** A body under its tag; 304 to a caller who holds it already. */
function sendTagged(
	c: EdgeContext,
	{ type, kept, tag, packed, varies }: Representation,
	body: () => Maybe<string | Bytes>,
): Maybe<Response> {
	const headers: Record<string, string> = { "Cache-Control": kept };
	if (tag !== undefined) headers.ETag = tag;
	if (varies) headers.Vary = type.Vary ? `${type.Vary}, Accept-Encoding` : "Accept-Encoding";
	else if (type.Vary) headers.Vary = type.Vary;
	if (tag !== undefined && etagMatches(c.req.header("if-none-match"), tag))
		return reply(c, null, 304, headers);
	for (const name in type) headers[name] ??= type[name]!;
	if (packed) headers["Content-Encoding"] = "gzip";
	return after(body(), (content) => reply(c, content, 200, headers));
}

/** Bytes that never change, plain and packed. */
export interface StaticContent {
	readonly bytes: Bytes;
	readonly gzipped: Bytes;
}

/** Answers with bytes that never change, packed for whoever takes them so. They are read, and their tag worked out, when they
 *  are first asked for: most deployments are asked for few of them.
 *  @param read    gets them
 *  @param maxAge  how long they may be kept unasked [s]
 *  @param type    headers that go with their type */
export function staticResponder(
	read: () => StaticContent,
	maxAge: number,
	type: Headers,
): (c: EdgeContext) => Maybe<Response> {
	const kept = cacheControl(maxAge, "public");
	let held: (StaticContent & { readonly tag: string }) | undefined;
	return (c) => {
		if (!held) {
			const content = read();
			held = { ...content, tag: entityTag(content.bytes) };
		}
		const { bytes, gzipped, tag } = held;
		const packed = acceptsGzip(c);
		const shown: Representation = { type, kept, tag: packed ? packedTag(tag) : tag, packed, varies: true };
		return sendTagged(c, shown, () => (packed ? gzipped : bytes));
	};
}
