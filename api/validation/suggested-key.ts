import type { z } from "@hono/zod-openapi";
import { nearest } from "./nearest-word.ts";
import { everyKind, keysAt, kindsOf, schemasAt } from "./schema-tree.ts";
import { alternatives, nameOf, quoted } from "./schema-words.ts";

/** What unknown keys of the object at a path most likely should have been: the very word in its right place, else one that is
 *  nearly it. What the object and those around it know is gathered once for all of its keys. */
export function hintsAt(
	root: z.core.$ZodType,
	path: readonly PropertyKey[],
	given: unknown,
): (key: string) => string {
	const here = schemasAt(root, path, given);
	const known = keysAt(root, path, given);
	const around = new Set(path.length > 0 ? keysAt(root, path.slice(0, -1), given) : []);
	const inside = here.flatMap(fieldsOf);
	const otherKinds = kindsAt(root, path, given);
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
		return known.length > 0 ? `known here: ${known.join(", ")}` : "nothing may stand here";
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

/** A key less the field that it begins with: `volumeL` of `tankVolumeL` in `tank`; else nothing. */
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
