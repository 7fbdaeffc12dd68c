import type { z } from "@hono/zod-openapi";
import { LIMITS } from "../config/limits.ts";
import type { FieldFault } from "../problem/problem.ts";
import { valueAt } from "./schema-tree.ts";
import { expectationAt, FORMS, nameOf, quoted, sentenceAt } from "./schema-words.ts";
import { hintsAt } from "./suggested-key.ts";
import { suggestionFor } from "./suggested-value.ts";

/** One fault by its path, which a body and a query report differently. */
export interface Fault {
	readonly path: readonly PropertyKey[];
	readonly code: FieldFault["code"];
	readonly detail: string;
}

const MOST = LIMITS.faultsListed.value;

function unknownKeys(
	keys: readonly string[],
	root: z.core.$ZodType,
	path: readonly PropertyKey[],
	sent: unknown,
): Fault[] {
	const hint = hintsAt(root, path, sent);
	return keys.slice(0, MOST).map((key) => ({
		path: [...path, key],
		code: "unknown",
		detail: `${nameOf([...path, key])} is not known; ${hint(key)}`,
	}));
}

/** The faults of the closest choice, whose outer form fits; else a sentence that names every choice. */
function unionFaults(
	issue: z.core.$ZodIssueInvalidUnion,
	root: z.core.$ZodType,
	path: readonly PropertyKey[],
	sent: unknown,
): Fault[] {
	const entered = issue.errors.filter((branch) =>
		branch.every(
			(inner) => inner.path.length > 0 || (inner.code !== "invalid_type" && inner.code !== "invalid_value"),
		),
	);
	const closest = entered.toSorted((a, b) => a.length - b.length)[0];
	if (closest) return closest.slice(0, MOST).flatMap((inner) => faultsOf(inner, root, sent, path));
	return [valueFault("wrong_type", root, path, sent)];
}

function valueFault(
	code: Fault["code"],
	root: z.core.$ZodType,
	path: readonly PropertyKey[],
	sent: unknown,
): Fault {
	const value = valueAt(sent, path);
	const expected = expectationAt(root, path, sent);
	const name = nameOf(path);
	if (value === undefined)
		return { path, code: "missing", detail: `${name} is missing: it must be ${expected}` };
	const suggestion = suggestionFor(value, root, path, sent);
	const detail = `${name} must be ${expected}; ${quoted(value)} is not`;
	return { path, code, detail: suggestion ? `${detail}; did you mean ${suggestion}?` : detail };
}

/** A fault in the schema's own words. */
function messageFault(code: Fault["code"], path: readonly PropertyKey[], message: string): Fault {
	return { path, code, detail: sentenceAt(path, message) };
}

function lengthFault(
	issue: z.core.$ZodIssueTooBig | z.core.$ZodIssueTooSmall,
	path: readonly PropertyKey[],
): Fault {
	const [bound, count] = issue.code === "too_big" ? ["at most", issue.maximum] : ["at least", issue.minimum];
	const [one, many] =
		issue.origin === "string"
			? ["character", "characters"]
			: issue.origin === "array"
				? ["entry", "entries"]
				: ["key", "keys"];
	const detail = `${nameOf(path)} must have ${bound} ${count} ${Number(count) === 1 ? one : many}`;
	return { path, code: "wrong_length", detail };
}

function faultsOf(
	issue: z.core.$ZodIssue,
	root: z.core.$ZodType,
	sent: unknown,
	base: readonly PropertyKey[],
): Fault[] {
	const path = [...base, ...issue.path];
	switch (issue.code) {
		case "invalid_type":
			return [valueFault("wrong_type", root, path, sent)];
		case "invalid_value":
			return [valueFault("not_a_choice", root, path, sent)];
		case "unrecognized_keys":
			return unknownKeys(issue.keys, root, path, sent);
		case "invalid_union":
			if (issue.discriminator === undefined) return unionFaults(issue, root, path, sent);
			return [valueFault("not_a_choice", root, path, sent)];
		case "too_big":
		case "too_small":
			if (["number", "int", "bigint"].includes(issue.origin))
				return [valueFault("out_of_bounds", root, path, sent)];
			return [lengthFault(issue, path)];
		case "invalid_format":
			if (FORMS[issue.format] === undefined) return [messageFault("wrong_format", path, issue.message)];
			return [valueFault("wrong_format", root, path, sent)];
		default:
			return [messageFault("broken_rule", path, issue.message)];
	}
}

/** Codes of values that could not be read: no further rule applies to them. */
const UNREADABLE: ReadonlySet<Fault["code"]> = new Set(["wrong_type", "wrong_format", "not_a_choice"]);

/** Every fault that a schema reports, in sentences that a person can act on, each once, up to the limit. */
export function faultsIn(error: z.ZodError, schema: z.ZodType, sent: unknown): readonly Fault[] {
	const faults: Fault[] = [];
	const unreadable = new Set<string>();
	for (const issue of error.issues) {
		for (const fault of faultsOf(issue, schema, sent, [])) {
			const place = pointerTo(fault.path);
			if (unreadable.has(place)) continue;
			faults.push(fault);
			if (UNREADABLE.has(fault.code)) unreadable.add(place);
		}
		if (faults.length >= MOST) break;
	}
	return faults.slice(0, MOST);
}

/** Every fault that a schema finds in a body, up to the limit, each with its JSON pointer. */
export function bodyFaults(error: z.ZodError, schema: z.ZodType, body: unknown): FieldFault[] {
	return faultsIn(error, schema, body).map(({ path, detail, code }) => ({
		in: "body",
		pointer: pointerTo(path),
		detail,
		code,
	}));
}

/** A JSON pointer (RFC 6901). */
export function pointerTo(path: readonly PropertyKey[]): string {
	return path.map((key) => `/${String(key).replaceAll("~", "~0").replaceAll("/", "~1")}`).join("");
}
