import { z } from "@hono/zod-openapi";
import type { Grounds } from "../../src/index.ts";
import { pointerTo } from "../validation/faults.ts";
import { choices, innerSchema, memberSchema, valueAt } from "../validation/schema-tree.ts";

type AssumedValue = string | number | boolean | readonly number[];

/** A value omitted from the request: what was used instead, and why. */
export interface Assumed extends Grounds {
	readonly pointer: string;
	readonly value: AssumedValue;
}

/** A value made from a request, and what had to be assumed for it. */
export interface Completed<T> {
	readonly value: T;
	readonly assumed: readonly Assumed[];
}

/** The value sent; if it is omitted, one that follows from the rest of the request. */
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

/** A field with a default and its grounds. The contract shows value and reason; the response repeats them. */
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

/** An object that may be omitted, because each of its fields may. */
export function part<T extends z.ZodObject | z.ZodDiscriminatedUnion>(schema: T) {
	return schema.optional().transform((value) => (value ?? schema.parse({})) as z.output<T>);
}

/** Every default that a schema filled in.
 *  @param sent  the request as received     @param value  the same, parsed */
export function appliedDefaults(
	schema: z.core.$ZodType,
	sent: unknown,
	value: unknown,
	path: readonly PropertyKey[] = [],
): readonly Assumed[] {
	const isDefault = (schema as z.core.$ZodTypes)._zod.def.type === "default";
	if (isDefault && sent === undefined)
		return [{ pointer: pointerTo(path), value: value as AssumedValue, ...groundsOf(schema, path) }];
	const inner = innerSchema(schema);
	if (inner) return appliedDefaults(inner, sent, value, path);
	if (typeof value !== "object" || value === null) return [];
	return choices(schema, value).flatMap((choice) =>
		keysOf(choice, value).flatMap((key) => {
			const member = memberSchema(choice, key)!;
			return appliedDefaults(member, valueAt(sent, [key]), valueAt(value, [key]), [...path, key]);
		}),
	);
}

/** The keys of an object's fields or of an array's entries. */
function keysOf({ _zod: { def } }: z.core.$ZodTypes, value: object): readonly PropertyKey[] {
	if (def.type === "array" && Array.isArray(value)) return [...value.keys()];
	return def.type === "object" ? Object.keys(def.shape) : [];
}

function groundsOf(schema: z.core.$ZodType, path: readonly PropertyKey[]): Grounds {
	const grounds = reasons.get(schema);
	if (!grounds) throw new Error(`${pointerTo(path)} has a default without a reason`);
	return grounds;
}
