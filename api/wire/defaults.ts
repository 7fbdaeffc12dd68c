import { z } from "@hono/zod-openapi";
import type { Grounds } from "../../src/index.ts";
import { pointerTo } from "../validation/faults.ts";

type AssumedValue = string | number | boolean | readonly number[];

/** A value that the request left out, with what was taken instead and on what grounds. */
export interface Assumed extends Grounds {
	readonly pointer: string;
	readonly value: AssumedValue;
}

/** A value that a request completes, and what had to be assumed for it. */
export interface Completed<T> {
	readonly value: T;
	readonly assumed: readonly Assumed[];
}

/** What was sent; where nothing was, a value that follows from the rest of the request. */
export function sentOr<T extends AssumedValue>(
	sent: T | undefined,
	pointer: string,
	value: T,
	grounds: Grounds,
): Completed<T> {
	return sent === undefined
		? { value, assumed: [{ pointer, value, ...grounds }] }
		: { value: sent, assumed: [] };
}

const reasons = z.registry<Grounds>();

/** A field with a default and the reason for it, both of which the contract shows and the answer repeats. */
export function assume<T extends z.ZodType>(
	field: T,
	value: z.util.NoUndefined<z.output<T>>,
	grounds: Grounds,
): z.ZodDefault<T> {
	const { description, ...rest } = field.meta() ?? {};
	const described = [description, `Default: ${grounds.reason}.`].filter(Boolean).join(" ");
	const filled = field.default(value);
	z.globalRegistry.add(filled as z.ZodType, { ...rest, description: described }); // where `meta` would make one more copy
	reasons.add(filled, grounds);
	return filled;
}

/** An object that may be left out whole, because each of its fields may. */
export function part<T extends z.ZodObject | z.ZodDiscriminatedUnion>(schema: T) {
	return schema.optional().transform((value) => (value ?? schema.parse({})) as z.output<T>);
}

/** Every default that a schema filled in.
 *  @param sent  the request as it came     @param value  the same, parsed */
export function defaultsTaken(schema: z.ZodType, sent: unknown, value: unknown): Assumed[] {
	return walk(schema as unknown as z.core.$ZodTypes, sent, value, []);
}

function walk(
	schema: z.core.$ZodTypes,
	sent: unknown,
	value: unknown,
	path: readonly PropertyKey[],
): Assumed[] {
	const def = schema._zod.def;
	switch (def.type) {
		case "default":
			if (sent !== undefined) return walk(def.innerType as z.core.$ZodTypes, sent, value, path);
			return [{ pointer: pointerTo(path), value: value as AssumedValue, ...groundsOf(schema, path) }];
		case "optional":
			return walk(def.innerType as z.core.$ZodTypes, sent, value, path);
		case "pipe":
			return walk(def.in as z.core.$ZodTypes, sent, value, path);
		case "union":
			return walkChoice(def.options as readonly z.core.$ZodTypes[], sent, value, path);
		case "object":
			return value === undefined
				? []
				: Object.entries(def.shape).flatMap(([key, field]) =>
						walk(field as z.core.$ZodTypes, member(sent, key), member(value, key), [...path, key]),
					);
		case "array":
			return value === undefined
				? []
				: (value as readonly unknown[]).flatMap((item, i) =>
						walk(def.element as z.core.$ZodTypes, member(sent, i), item, [...path, i]),
					);
		default:
			return [];
	}
}

/** Of a union of objects the one whose `kind` the parsed value bears; a union of plain values holds no defaults. */
function walkChoice(
	options: readonly z.core.$ZodTypes[],
	sent: unknown,
	value: unknown,
	path: readonly PropertyKey[],
): Assumed[] {
	const chosen = options.find((option) => {
		const def = option._zod.def;
		return def.type === "object" && def.shape.kind?._zod.values?.has(member(value, "kind") as never);
	});
	return chosen ? walk(chosen, sent, value, path) : [];
}

function member(holder: unknown, key: PropertyKey): unknown {
	return typeof holder === "object" && holder !== null
		? (holder as Record<PropertyKey, unknown>)[key]
		: undefined;
}

function groundsOf(schema: z.core.$ZodTypes, path: readonly PropertyKey[]): Grounds {
	const grounds = reasons.get(schema);
	if (!grounds) throw new Error(`${pointerTo(path)} has a default without a reason`);
	return grounds;
}
