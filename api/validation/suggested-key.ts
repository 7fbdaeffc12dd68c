import type { z } from "@hono/zod-openapi";
import { nearest } from "./nearest-word.ts";
import { everyKind, keysAt, kindsOf, schemasAt } from "./schema-tree.ts";
import { alternatives, nameOf, quoted } from "./schema-words.ts";

/** What the unknown keys of the object at a path most likely mean: the same word in its right place, else a similar word.
 *  The names known in the object and around it are gathered once for all of its keys. */
export function hintsAt(
	root: z.core.$ZodType,
	path: readonly PropertyKey[],
	sent: unknown,
): (key: string) => string {
	const here = schemasAt(root, path, sent);
	const known = keysAt(root, path, sent);
	const around = new Set(path.length > 0 ? keysAt(root, path.slice(0, -1), sent) : []);
	const inside = here.flatMap(fieldsOf);
	const otherKinds = kindsAt(root, path, sent);
	return (key) => {
		const kinds = otherKinds.flatMap(({ keys, kinds }) => (keys.has(key) ? kinds : []));
		if (kinds.length > 0) return `it belongs to kind ${alternatives(kinds.map(quoted))}`;
		const places = inside.flatMap(({ field, keys }) =>
			[key, withoutField(key, field)]
				.filter((name) => keys.has(name))
				.map((name) => nameOf([...path, field, name])),
		);
		if (places.length > 0) return `did you mean ${alternatives([...new Set(places)])}?`;
		if (around.has(key)) return `it belongs beside ${nameOf(path)}, not in it`;
		const close = nearest(key, known);
		if (close) return `did you mean ${close}?`;
		return known.length > 0 ? `known names: ${known.join(", ")}` : "nothing is allowed here";
	};
}

/** A field that holds an object, and what that may hold in any of its kinds. */
interface Field {
	readonly field: string;
	readonly keys: ReadonlySet<string>;
}

function fieldsOf({ _zod: { def } }: z.core.$ZodTypes): readonly Field[] {
	if (def.type !== "object") return [];
	return Object.entries(def.shape).map(([field, inner]) => ({
		field,
		keys: new Set(everyKind(inner).flatMap(ownKeys)),
	}));
}

const ownKeys = ({ _zod: { def } }: z.core.$ZodTypes): readonly string[] =>
	def.type === "object" ? Object.keys(def.shape) : [];

/** A key without the field that it begins with: `volumeL` of `tankVolumeL` in `tank`; else nothing. */
function withoutField(key: string, field: string): string {
	const rest = key.startsWith(field) ? key.slice(field.length).replace(/^_/, "") : "";
	return rest.charAt(0).toLowerCase() + rest.slice(1);
}

/** The kinds that the object at a path may have, each with its keys. */
function kindsAt(
	root: z.core.$ZodType,
	path: readonly PropertyKey[],
	value: unknown,
): readonly { readonly keys: ReadonlySet<string>; readonly kinds: readonly unknown[] }[] {
	const field = path.at(-1);
	if (field === undefined) return [];
	return schemasAt(root, path.slice(0, -1), value).flatMap(({ _zod: { def } }) =>
		def.type === "object" && Object.hasOwn(def.shape, field)
			? everyKind(def.shape[String(field)]!).map((kind) => ({
					keys: new Set(ownKeys(kind)),
					kinds: kindsOf(kind),
				}))
			: [],
	);
}
