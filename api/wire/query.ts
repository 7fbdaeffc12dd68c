import { z } from "@hono/zod-openapi";

const DECIMAL = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d+)?$/i; // each digit belongs to one part alone, so none is tried twice
const LONGEST = 400; // [characters] of a decimal; the largest number takes 309 digits

/** A query as plain data: a string, or an array of strings for a repeated name. Without a prototype, so that every name is safe. */
export function queryOf(url: string): Readonly<Record<string, string | string[]>> {
	const query: Record<string, string | string[]> = Object.create(null);
	const start = url.indexOf("?");
	if (start < 0) return query;
	for (const [name, value] of pairsOf(url.slice(start + 1))) {
		const before = query[name];
		if (Array.isArray(before)) before.push(value);
		else query[name] = before === undefined ? value : [before, value];
	}
	return query;
}

const PLAIN = /^[\w.,:;~*!/()$'-]+=[\w.,:;~*!/()$'-]*$/; // one pair, nothing in it escaped

/** The pairs of a query. The most common one, a single plain pair, needs no parser. */
function pairsOf(query: string): Iterable<readonly [name: string, value: string]> {
	if (!PLAIN.test(query)) return new URLSearchParams(query);
	const equals = query.indexOf("=");
	return [[query.slice(0, equals), query.slice(equals + 1)]];
}

/** A schema that reads a field from text, with the field's description and unit. */
function described<Reading extends z.ZodType>(field: z.ZodType, reading: Reading): Reading {
	const meta = field.meta();
	return meta ? reading.meta(meta) : reading;
}

const isDecimal = (text: string) => text.length <= LONGEST && DECIMAL.test(text);

/** A number field read from a query; anything but a plain decimal stays a string, and is refused as one. */
export function fromQuery<Field extends z.ZodType>(field: Field) {
	return described(
		field,
		z.preprocess((value) => (typeof value === "string" && isDecimal(value) ? Number(value) : value), field),
	);
}

/** A time with its offset, read from a query, where an unescaped plus sign arrives as a space. */
export function instantFromQuery(field: z.ZodISODateTime) {
	return described(
		field,
		z.preprocess(
			(value) => (typeof value === "string" ? value.replace(/ (?=\d\d:\d\d$)/, "+") : value),
			field,
		),
	);
}

/** A field that may be repeated in a query: one value, or many. */
export function oneOrMany<Field extends z.ZodType>(field: Field, most: number) {
	return described(
		field,
		z.preprocess((value) => (typeof value === "string" ? [value] : value), z.array(field).min(1).max(most)),
	);
}

/** An operation without a query: any parameter is a fault. */
export const NoQuery = z.strictObject({});
