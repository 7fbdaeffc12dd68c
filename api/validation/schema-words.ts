import { z } from "@hono/zod-openapi";
import { schemasAt } from "./schema-tree.ts";

/** Formats that the contract names, in words. */
export const FORMS: Readonly<Record<string, string>> = {
	date: "a calendar date, such as 2025-01-15",
	datetime: "a date and time with an offset from UTC, such as 2025-01-15T08:30:00+05:30",
	time: "a time of day, such as 08:30",
};

const LONGEST = 60; // characters of a client's text that a sentence repeats

function excerpt(text: string): string {
	return text.length > LONGEST ? `${text.slice(0, LONGEST - 1)}…` : text;
}

/** A name such as `tank.insulation.thicknessMm` or `time[2]`. */
export function nameOf(path: readonly PropertyKey[]): string {
	const name = path
		.map((key) => (typeof key === "number" ? `[${key}]` : `.${excerpt(String(key))}`))
		.join("");
	return name.replace(/^\./, "") || "the body";
}

/** A sentence about the value at a path. One that begins with "must" gets the value's name as its subject. */
export function sentenceAt(path: readonly PropertyKey[], text: string): string {
	return text.startsWith("must ") ? `${nameOf(path)} ${text}` : text;
}

/** A value as a sentence repeats it, without the content of an array or object, however deep. */
export function quoted(value: unknown): string {
	if (Array.isArray(value)) return "an array";
	if (typeof value === "object" && value !== null) return "an object";
	return typeof value === "string" ? JSON.stringify(excerpt(value)) : String(value);
}

/** The unit that a number field was built with, with a space before it. */
function unitOf(schema: z.core.$ZodType): string {
	const unit = z.globalRegistry.get(schema)?.["x-unit"];
	return typeof unit !== "string" || unit === "1" ? "" : unit === "°" ? unit : ` ${unit}`;
}

/** Words as alternatives: "a, b or c". */
export function alternatives(words: readonly string[]): string {
	return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} or ${words.at(-1)}`;
}

/** What a schema expects, in words: "a number from 20 to 95 °C". */
function expectation(schema: z.core.$ZodTypes): string {
	const def = schema._zod.def;
	switch (def.type) {
		case "number":
			return `${"format" in def ? "a whole number" : "a number"}${bounds(schema)}`;
		case "string":
			return FORMS[(def as { format?: string }).format ?? ""] ?? "a string";
		case "boolean":
			return "true or false";
		case "array":
			return "an array";
		case "literal":
			return alternatives(def.values.map(quoted));
		case "enum":
			return `one of ${alternatives(Object.values(def.entries).map(quoted))}`;
		default:
			return "an object";
	}
}

/** The range of a number and its unit: " from 20 to 95 °C". */
function bounds(schema: z.core.$ZodTypes): string {
	const limits = (schema._zod.def.checks ?? []).flatMap(({ _zod: { def } }) => {
		const { check, value, inclusive } = def as z.core.$ZodCheckLessThanDef;
		const [outer, inner] = (check as string) === "greater_than" ? ["from", "above"] : ["to", "below"];
		return ["greater_than", "less_than"].includes(check) ? [`${inclusive ? outer : inner} ${value}`] : [];
	});
	const range =
		limits.length === 1 ? limits[0]!.replace("from", "of at least").replace("to", "up to") : limits.join(" ");
	return range || unitOf(schema) ? ` ${range || "in"}${unitOf(schema)}` : "";
}

/** What the contract expects at a path, with each choice that it allows there. */
export function expectationAt(root: z.core.$ZodType, path: readonly PropertyKey[], sent: unknown): string {
	const schemas = schemasAt(root, path, sent);
	const fixed = fixedValues(schemas);
	if (fixed.length > 1 && schemas.every(({ _zod: { def } }) => def.type === "literal"))
		return `one of ${alternatives(fixed.map(quoted))}`;
	return [...new Set(schemas.map((schema) => expectation(schema)))].join(", or ");
}

/** The words allowed at a path. */
export function choicesAt(
	root: z.core.$ZodType,
	path: readonly PropertyKey[],
	sent: unknown,
): readonly string[] {
	return fixedValues(schemasAt(root, path, sent)).filter((value) => typeof value === "string");
}

function fixedValues(schemas: readonly z.core.$ZodTypes[]): readonly unknown[] {
	const values = schemas.flatMap(({ _zod: { def } }): readonly unknown[] =>
		def.type === "literal" ? def.values : def.type === "enum" ? Object.values(def.entries) : [],
	);
	return [...new Set(values)];
}
