import type { z } from "@hono/zod-openapi";

const POWERS = Array.from({ length: 23 }, (_, n) => Number(`1e${n}`)); // the powers of ten a double holds exactly
const LOW = 1e7; // eight digits before the point
const HIGH = 1e8;

/** A number to eight significant digits, the same double on every platform: one product with and one division by an
 *  exact power of ten. Whole numbers, and numbers too small or too large for that, pass as they are or through text. */
export function eightDigits(x: number): number {
	if (Number.isInteger(x)) return x;
	const size = Math.abs(x);
	if (!(size >= 1e-14 && size < HIGH)) return Number(x.toPrecision(8));
	let n = Math.max(0, 7 - Math.floor(Math.log10(size)));
	if (size * POWERS[n]! >= HIGH) n -= 1;
	else if (size * POWERS[n]! < LOW) n += 1;
	return Math.round(x * POWERS[n]!) / POWERS[n]!;
}

/** Rounds every number inside a value, in place: only for data that nothing else refers to. A frozen array is copied. */
function round(value: unknown): unknown {
	if (typeof value === "number") return eightDigits(value);
	if (Array.isArray(value) && Object.isFrozen(value)) return value.map(round);
	if (typeof value === "object" && value !== null) {
		const holder = value as Record<string, unknown>;
		for (const key of Object.keys(holder)) holder[key] = round(holder[key]);
	}
	return value;
}

/** The body of a response: checked against its schema, which refuses NaN, Infinity and unknown fields,
 *  then rounded, so that every platform returns the same bytes. */
export function wireValue(schema: z.ZodType, value: unknown): unknown {
	return round(schema.parse(value));
}
