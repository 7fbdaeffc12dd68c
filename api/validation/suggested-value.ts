import type { z } from "@hono/zod-openapi";
import { nearest } from "./nearest-word.ts";
import { kindsOf, schemasAt } from "./schema-tree.ts";
import { choicesAt, quoted } from "./schema-words.ts";

const LONGEST = 60; // letters; no word of the contract comes near it
const SHORT = 5; // letters: among shorter words any is near any other

/** What a text most likely stands for: one of the words that may stand there, or an object of that kind. */
export function suggestionFor(
	value: unknown,
	root: z.core.$ZodType,
	path: readonly PropertyKey[],
	given: unknown,
): string | undefined {
	if (typeof value !== "string" || value.length > LONGEST) return undefined;
	if (schemasAt(root, path, given).flatMap(kindsOf).includes(value)) return `{ "kind": ${quoted(value)} }`;
	const choices = choicesAt(root, path, given);
	const same = choices.find((choice) => choice.toLowerCase() === value.toLowerCase());
	const close = same ?? (value.length < SHORT ? undefined : nearest(value, choices));
	return close && quoted(close);
}
