import { z } from "@hono/zod-openapi";
import type { FieldFault } from "./problem.ts";
import { keysAt, schemasAt, valueAt } from "./schema-walk.ts";
import { nearest } from "./spelling.ts";

interface Fault {
	readonly path: readonly PropertyKey[];
	readonly code: FieldFault["code"];
	readonly detail: string;
}

const FORMS: Readonly<Record<string, string>> = {
	date: "a date of the calendar, such as 2025-01-15",
	datetime: "a time with its offset from UTC, such as 2025-01-15T08:30:00+05:30",
	time: "a time of day, such as 08:30",
};

/** A name such as `tank.insulation.thicknessMm` or `time[2]`. */
function nameOf(path: readonly PropertyKey[]): string {
	const name = path.map((key) => (typeof key === "number" ? `[${key}]` : `.${String(key)}`)).join("");
	return name.replace(/^\./, "") || "the body";
}

/** The unit that a number field was built with, with a space before it. */
function unitOf(schema: z.core.$ZodType): string {
	const unit = z.globalRegistry.get(schema)?.["x-unit"];
	return typeof unit !== "string" || unit === "1" ? "" : unit === "°" ? unit : ` ${unit}`;
}

function shown(value: unknown): string {
	const text = JSON.stringify(value) ?? "nothing";
	return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}

function list(words: readonly string[]): string {
	return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} or ${words.at(-1)}`;
}

/** What a schema wants, in words: "a number of °C from 20 to 95". */
function wanted(schema: z.core.$ZodTypes): string {
	const def = schema._zod.def;
	switch (def.type) {
		case "number":
			return `${"format" in def ? "a whole number" : "a number"}${bounds(schema)}`;
		case "string":
			return FORMS[(def as { format?: string }).format ?? ""] ?? "a text";
		case "boolean":
			return "true or false";
		case "array":
			return "a list";
		case "literal":
			return list(def.values.map(shown));
		case "enum":
			return `one of ${list(Object.values(def.entries).map(shown))}`;
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

function wantedAt(root: z.core.$ZodType, path: readonly PropertyKey[], given: unknown): string {
	return [...new Set(schemasAt(root, path, given).map((schema) => wanted(schema)))].join(", or ");
}

function unknownKeys(
	keys: readonly string[],
	path: readonly PropertyKey[],
	known: readonly string[],
): Fault[] {
	return keys.map((key) => {
		const close = nearest(key, known);
		const hint = close
			? `did you mean ${close}?`
			: known.length > 0
				? `known here: ${known.join(", ")}`
				: "nothing may stand here";
		return {
			path: [...path, key],
			code: "unknown",
			detail: `${nameOf([...path, key])} is not known; ${hint}`,
		};
	});
}

/** The faults of the choice that came closest: one whose outer form fits, else a sentence that names every choice. */
function unionFaults(
	issue: z.core.$ZodIssueInvalidUnion,
	root: z.core.$ZodType,
	path: readonly PropertyKey[],
	given: unknown,
): Fault[] {
	const entered = issue.errors.filter((branch) =>
		branch.every(
			(inner) => inner.path.length > 0 || (inner.code !== "invalid_type" && inner.code !== "invalid_value"),
		),
	);
	const closest = entered.toSorted((a, b) => a.length - b.length)[0];
	if (closest) return closest.flatMap((inner) => faultsOf(inner, root, given, path));
	return [wrong("wrong_type", root, path, given)];
}

function wrong(
	code: Fault["code"],
	root: z.core.$ZodType,
	path: readonly PropertyKey[],
	given: unknown,
): Fault {
	const value = valueAt(given, path);
	const want = wantedAt(root, path, given);
	const name = nameOf(path);
	if (value === undefined) return { path, code: "missing", detail: `${name} is missing: it must be ${want}` };
	return { path, code, detail: `${name} must be ${want}; ${shown(value)} is not` };
}

/** A schema's own words; those that begin with "must" lack their subject. */
function ruled(code: Fault["code"], path: readonly PropertyKey[], message: string): Fault {
	return { path, code, detail: message.startsWith("must ") ? `${nameOf(path)} ${message}` : message };
}

function lengthFault(
	issue: z.core.$ZodIssueTooBig | z.core.$ZodIssueTooSmall,
	path: readonly PropertyKey[],
): Fault {
	const limit = issue.code === "too_big" ? `at most ${issue.maximum}` : `at least ${issue.minimum}`;
	const what = issue.origin === "string" ? "characters" : issue.origin === "array" ? "entries" : "keys";
	return { path, code: "wrong_length", detail: `${nameOf(path)} must have ${limit} ${what}` };
}

function faultsOf(
	issue: z.core.$ZodIssue,
	root: z.core.$ZodType,
	given: unknown,
	base: readonly PropertyKey[],
): Fault[] {
	const path = [...base, ...issue.path];
	switch (issue.code) {
		case "invalid_type":
			return [wrong("wrong_type", root, path, given)];
		case "invalid_value":
			return [wrong("not_a_choice", root, path, given)];
		case "unrecognized_keys":
			return unknownKeys(issue.keys, path, keysAt(root, path, given));
		case "invalid_union":
			if (issue.discriminator === undefined) return unionFaults(issue, root, path, given);
			return [wrong("not_a_choice", root, path, given)];
		case "too_big":
		case "too_small":
			if (["number", "int", "bigint"].includes(issue.origin))
				return [wrong("out_of_bounds", root, path, given)];
			return [lengthFault(issue, path)];
		case "invalid_format":
			if (FORMS[issue.format] === undefined) return [ruled("wrong_format", path, issue.message)];
			return [wrong("wrong_format", root, path, given)];
		default:
			return [ruled("broken_rule", path, issue.message)];
	}
}

/** Every fault that a schema finds in a body, in sentences a person can act on. */
export function bodyFaults(error: z.ZodError, schema: z.ZodType, body: unknown): FieldFault[] {
	return error.issues
		.flatMap((issue) => faultsOf(issue, schema, body, []))
		.map(({ path, detail, code }) => ({ in: "body", pointer: pointerTo(path), detail, code }));
}

/** The same for a query, where the place of a fault is a parameter. */
export function queryFaults(error: z.ZodError, schema: z.ZodType, query: object): FieldFault[] {
	const given = Object.fromEntries(
		Object.entries(query).map(([name, value]) => [name, listed(name, value, schema, query)]),
	);
	return error.issues
		.flatMap((issue) => faultsOf(issue, schema, given, []))
		.map(
			({ path, detail, code }) =>
				repeated(path, given, schema) ?? { in: "query", ...parameter(path), detail, code },
		);
}

/** A parameter that may be repeated counts as a list when it is given once. */
function listed(name: string, value: unknown, schema: z.ZodType, query: object): unknown {
	const many = schemasAt(schema, [name], query).some(({ _zod: { def } }) => def.type === "array");
	return many && !Array.isArray(value) ? [value] : value;
}

function parameter(path: readonly PropertyKey[]): { parameter?: string } {
	return path.length > 0 ? { parameter: String(path[0]) } : {};
}

/** A parameter given several times that takes one value. */
function repeated(path: readonly PropertyKey[], query: unknown, schema: z.ZodType): FieldFault | undefined {
	const value = valueAt(query, path);
	const single = schemasAt(schema, path, query).every(({ _zod: { def } }) => def.type !== "array");
	if (path.length !== 1 || !Array.isArray(value) || !single || schemasAt(schema, path, query).length === 0)
		return undefined;
	const name = String(path[0]);
	return {
		in: "query",
		parameter: name,
		detail: `${name} is given ${value.length} times; it takes one value`,
		code: "wrong_type",
	};
}

/** A JSON pointer (RFC 6901). */
export function pointerTo(path: readonly PropertyKey[]): string {
	return path.map((key) => `/${String(key).replaceAll("~", "~0").replaceAll("/", "~1")}`).join("");
}
