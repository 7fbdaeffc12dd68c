import type { z } from "@hono/zod-openapi";
import { everyKind, keysAt, kindsOf, schemasAt } from "./schema-walk.ts";
import { list, nameOf, shown } from "./schema-words.ts";
import { nearest } from "./spelling.ts";

/** What an unknown key most likely should have been: the very word in its right place, else one that is nearly it. */
export function hintFor(
	key: string,
	root: z.core.$ZodType,
	path: readonly PropertyKey[],
	given: unknown,
): string {
	const { inside, around, kinds } = elsewhere(root, path, given, key);
	if (kinds.length > 0) return `it belongs to kind ${list(kinds.map(shown))}`;
	if (inside.length > 0) return `did you mean ${list(inside)}?`;
	if (around) return `it belongs beside ${nameOf(path)}, not in it`;
	const known = keysAt(root, path, given);
	const close = nearest(key, known);
	if (close) return `did you mean ${close}?`;
	return known.length > 0 ? `known here: ${known.join(", ")}` : "nothing may stand here";
}

/** Where else a key would be known: in the objects at a path, in the object around it, or in another kind of the object itself. */
interface Elsewhere {
	readonly inside: readonly string[]; // where in its fields, such as `site.latitude`
	readonly around: boolean; // whether the object that holds this one knows it
	readonly kinds: readonly unknown[]; // values of `kind` with which this object would know it
}

function elsewhere(
	root: z.core.$ZodType,
	path: readonly PropertyKey[],
	value: unknown,
	key: string,
): Elsewhere {
	const around = path.length > 0 && keysAt(root, path.slice(0, -1), value).includes(key);
	const inside = schemasAt(root, path, value).flatMap(({ _zod: { def } }) =>
		def.type === "object"
			? Object.entries(def.shape).flatMap(([field, inner]) =>
					[key, withoutField(key, field)]
						.filter((name) => name !== "" && knows(inner, name))
						.map((name) => nameOf([...path, field, name])),
				)
			: [],
	);
	return { inside: [...new Set(inside)], around, kinds: kindsKnowing(root, path, value, key) };
}

/** A key less the field that it begins with: `volumeL` of `tankVolumeL` in `tank`; else nothing. */
function withoutField(key: string, field: string): string {
	const rest = key.startsWith(field) ? key.slice(field.length).replace(/^_/, "") : "";
	return rest.charAt(0).toLowerCase() + rest.slice(1);
}

/** Whether an object in any of its kinds has a key. */
function knows(schema: z.core.$ZodType, key: string): boolean {
	return everyKind(schema).some(
		({ _zod: { def } }) => def.type === "object" && Object.hasOwn(def.shape, key),
	);
}

/** The kinds of the object at a path that have a key which its own kind has not. */
function kindsKnowing(
	root: z.core.$ZodType,
	path: readonly PropertyKey[],
	value: unknown,
	key: string,
): readonly unknown[] {
	const holder = path.slice(0, -1);
	const field = path.at(-1);
	if (field === undefined) return [];
	return schemasAt(root, holder, value).flatMap(({ _zod: { def } }) => {
		if (def.type !== "object" || !Object.hasOwn(def.shape, field)) return [];
		return everyKind(def.shape[String(field)]!).flatMap((kind) => {
			const { def: inner } = kind._zod;
			return inner.type === "object" && Object.hasOwn(inner.shape, key) ? kindsOf(kind) : [];
		});
	});
}
