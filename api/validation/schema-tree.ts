import type { z } from "@hono/zod-openapi";

/** The schema inside a wrapper: a default, an option, a reading-in; undefined for a schema that checks values itself. */
export function innerSchema(schema: z.core.$ZodType): z.core.$ZodTypes | undefined {
	const def = (schema as z.core.$ZodTypes)._zod.def;
	switch (def.type) {
		case "optional":
		case "default":
		case "prefault":
		case "nullable":
		case "nonoptional":
		case "readonly":
			return def.innerType as z.core.$ZodTypes;
		case "pipe": {
			const out = def.out as z.core.$ZodTypes;
			return out._zod.def.type === "transform" ? (def.in as z.core.$ZodTypes) : out;
		}
		default:
			return undefined;
	}
}

/** A schema without its wrappers. */
function bare(schema: z.core.$ZodType): z.core.$ZodTypes {
	const inner = innerSchema(schema);
	return inner ? bare(inner) : (schema as z.core.$ZodTypes);
}

/** Whether an object's fixed fields (its `kind`) are those of the value, or omitted where that is allowed. */
function fits(schema: z.core.$ZodTypes, value: unknown): boolean {
	if (schema._zod.def.type !== "object" || typeof value !== "object" || value === null) return true;
	return Object.entries(schema._zod.def.shape).every(([key, field]) => {
		const inner = bare(field);
		if (inner._zod.def.type !== "literal") return true;
		const sent = valueAt(value, [key]);
		return sent === undefined
			? field._zod.optin !== undefined
			: inner._zod.def.values.includes(sent as never);
	});
}

/** A schema, or every choice that it offers. */
export function everyKind(schema: z.core.$ZodType): readonly z.core.$ZodTypes[] {
	const inner = bare(schema);
	return inner._zod.def.type === "union" ? inner._zod.def.options.flatMap(everyKind) : [inner];
}

/** A schema, or the choices that a value may match: those of its `kind`, else all. */
export function choices(schema: z.core.$ZodType, value: unknown): readonly z.core.$ZodTypes[] {
	const all = everyKind(schema);
	if (all.length === 1) return all;
	const fitting = all.filter((option) => fits(option, value));
	return fitting.length > 0 ? fitting : all;
}

/** The schemas for the value at a path: one, or several where the contract offers a choice. */
export function schemasAt(
	root: z.core.$ZodType,
	path: readonly PropertyKey[],
	value: unknown,
): readonly z.core.$ZodTypes[] {
	const here = choices(root, value);
	const [key, ...rest] = path;
	if (key === undefined) return here;
	const inside = valueAt(value, [key]);
	return here.flatMap((schema) => {
		const member = memberSchema(schema, key);
		return member ? schemasAt(member, rest, inside) : [];
	});
}

/** The schema of one entry of an array or one field of an object; undefined where there is none. */
export function memberSchema(
	{ _zod: { def } }: z.core.$ZodTypes,
	key: PropertyKey,
): z.core.$ZodType | undefined {
	switch (def.type) {
		case "array":
			return def.element;
		case "tuple":
			return def.items[Number(key)];
		case "record":
			return def.valueType;
		case "object": // own fields alone: a key such as "constructor" is on every object's prototype
			return Object.hasOwn(def.shape, key) ? def.shape[String(key)] : undefined;
		default:
			return undefined;
	}
}

/** The keys that an object at a path may have. */
export function keysAt(
	root: z.core.$ZodType,
	path: readonly PropertyKey[],
	value: unknown,
): readonly string[] {
	const keys = schemasAt(root, path, value).flatMap(({ _zod: { def } }) =>
		def.type === "object" ? Object.keys(def.shape) : [],
	);
	return [...new Set(keys)];
}

/** The values that an object's `kind` may have; none without a kind. */
export function kindsOf({ _zod: { def } }: z.core.$ZodTypes): readonly unknown[] {
	if (def.type !== "object" || !Object.hasOwn(def.shape, "kind")) return [];
	const kind = bare(def.shape.kind!);
	return kind._zod.def.type === "literal" ? kind._zod.def.values : [];
}

/** The value at a path of plain data. */
export function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
	let here = value;
	for (const key of path) {
		if (typeof here !== "object" || here === null || !Object.hasOwn(here, key)) return undefined;
		here = (here as Record<PropertyKey, unknown>)[key];
	}
	return here;
}
