import type { Config } from "./config.ts";
import { entityTag, type Headers, matches } from "./headers.ts";
import { type EdgeContext, keeping, reply, takesGzip } from "./reply.ts";

const WORTH_PACKING = 2048; // [characters] a shorter text fits into a packet or two anyway

/** A text as the answer: tagged where it may be kept, packed where the caller takes it so and nothing in front packs.
 *  @param maxAge  how long it may be kept [s] */
export async function told(
	c: EdgeContext,
	text: string,
	maxAge: number,
	headers: Headers,
	pack: Config["pack"],
): Promise<Response> {
	if (pack && text.length >= WORTH_PACKING && takesGzip(c))
		return tagged(c, maxAge > 0 ? packedTag(entityTag(text)) : undefined, () => pack(text), {
			...PACKED,
			...keeping(maxAge),
			...headers,
		});
	return tagged(c, maxAge > 0 ? entityTag(text) : undefined, () => text, { ...keeping(maxAge), ...headers });
}

const PACKED = { "Content-Encoding": "gzip", Vary: "Accept, Accept-Encoding" };

const packedTag = (tag: string): string => `${tag.slice(0, -1)}-gzip"`;

type Bytes = Uint8Array<ArrayBuffer>;

/** A body under its tag; 304 to a caller who holds it already. */
async function tagged(
	c: EdgeContext,
	tag: string | undefined,
	body: () => string | Bytes | Promise<Bytes>,
	headers: Headers,
): Promise<Response> {
	if (tag === undefined) return reply(c, await body(), 200, headers);
	if (!matches(c.req.header("if-none-match"), tag))
		return reply(c, await body(), 200, { ...headers, ETag: tag });
	const { "Content-Type": _type, "Content-Encoding": _encoding, ...kept } = headers;
	return reply(c, null, 304, { ...kept, ETag: tag });
}

/** Bytes that never change, and how to send them. */
export interface Fixed {
	readonly bytes: Bytes;
	readonly gzipped?: Bytes;
	readonly maxAge: number; // how long they may be kept unasked [s]
	readonly headers: Headers;
}

/** Answers with bytes that never change, their tag worked out once, packed for whoever takes them so. */
export function fixed({ bytes, gzipped, maxAge, headers }: Fixed): (c: EdgeContext) => Promise<Response> {
	const tag = entityTag(bytes);
	const plain = { ...keeping(maxAge), ...headers, ...(gzipped && { Vary: PACKED.Vary }) };
	return (c) =>
		gzipped && takesGzip(c)
			? tagged(c, packedTag(tag), () => gzipped, { ...plain, ...PACKED })
			: tagged(c, tag, () => bytes, plain);
}
