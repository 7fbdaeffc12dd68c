import type { z } from "@hono/zod-openapi";
import { nearest } from "./nearest-word.ts";
import { kindsOf, schemasAt } from "./schema-tree.ts";
import { choicesAt, quoted } from "./schema-words.ts";

const LONGEST = 60; // letters; every word of the contract is much shorter
const SHORT = 5; // letters: among shorter words any is near any other

/** What a text most likely means: one of the words allowed there, or an object of that kind. */
export function suggestionFor(
	value: unknown,
	root: z.core.$ZodType,
	path: readonly PropertyKey[],
	sent: unknown,
): string | undefined {
	if (typeof value !== "string" || value.length > LONGEST) return undefined;
	if (schemasAt(root, path, sent).flatMap(kindsOf).includes(value)) return `{ "kind": ${quoted(value)} }`;
	const choices = choicesAt(root, path, sent);
	const same = choices.find((choice) => choice.toLowerCase() === value.toLowerCase());
	const close = same ?? (value.length < SHORT ? undefined : nearest(value, choices));
	return close && quoted(close);
}
