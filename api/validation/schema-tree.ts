import type { z } from "@hono/zod-openapi";

/** What a schema checks once defaults, optionality and reading-in are taken off. */
function bare(schema: z.core.$ZodType): z.core.$ZodTypes {
	const def = (schema as z.core.$ZodTypes)._zod.def;
	switch (def.type) {
		case "optional":
		case "default":
		case "prefault":
		case "nullable":
		case "nonoptional":
		case "readonly":
			return bare(def.innerType);
		case "pipe":
			return bare((def.out as z.core.$ZodTypes)._zod.def.type === "transform" ? def.in : def.out);
		default:
			return schema as z.core.$ZodTypes;
	}
}

/** Whether an object's fixed fields (its `kind`) are those of the value, or left out where they may be. */
function fits(schema: z.core.$ZodTypes, value: unknown): boolean {
	if (schema._zod.def.type !== "object" || typeof value !== "object" || value === null) return true;
	return Object.entries(schema._zod.def.shape).every(([key, field]) => {
		const inner = bare(field);
		if (inner._zod.def.type !== "literal") return true;
		const given = valueAt(value, [key]);
		return given === undefined
			? field._zod.optin !== undefined
			: inner._zod.def.values.includes(given as never);
	});
}

/** A schema, or every choice that it leaves. */
export function everyKind(schema: z.core.$ZodType): readonly z.core.$ZodTypes[] {
	const inner = bare(schema);
	return inner._zod.def.type === "union" ? inner._zod.def.options.flatMap(everyKind) : [inner];
}

function choices(schema: z.core.$ZodType, value: unknown): readonly z.core.$ZodTypes[] {
	const all = everyKind(schema);
	const fitting = all.filter((option) => fits(option, value));
	return fitting.length > 0 ? fitting : all;
}

/** The schemas that the value at a path is held against: one, or several where the contract leaves a choice. */
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
		const def = schema._zod.def;
		if (def.type === "array") return schemasAt(def.element, rest, inside);
		if (def.type === "tuple")
			return def.items[Number(key)] ? schemasAt(def.items[Number(key)]!, rest, inside) : [];
		if (def.type === "record") return schemasAt(def.valueType, rest, inside);
		// Own fields alone: a key such as "constructor" is on every object's prototype.
		if (def.type !== "object" || !Object.hasOwn(def.shape, key)) return [];
		return schemasAt(def.shape[String(key)]!, rest, inside);
	});
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

/** The values that an object's `kind` may have; none of what is no object, or has no kind. */
export function kindsOf({ _zod: { def } }: z.core.$ZodTypes): readonly unknown[] {
	if (def.type !== "object" || !Object.hasOwn(def.shape, "kind")) return [];
	const kind = bare(def.shape.kind!);
	return kind._zod.def.type === "literal" ? kind._zod.def.values : [];
}

/** What stands at a path of plain data. */
export function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
	let here = value;
	for (const key of path) {
		if (typeof here !== "object" || here === null || !Object.hasOwn(here, key)) return undefined;
		here = (here as Record<PropertyKey, unknown>)[key];
	}
	return here;
}
