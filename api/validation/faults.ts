import type { z } from "@hono/zod-openapi";
import { LIMITS } from "../config/limits.ts";
import type { FieldFault } from "../problem/problem.ts";
import { valueAt } from "./schema-tree.ts";
import { expectationAt, FORMS, nameOf, quoted } from "./schema-words.ts";
import { hintsAt } from "./suggested-key.ts";
import { suggestionFor } from "./suggested-value.ts";

/** One fault by its path; where it stands is said differently for a body and a query. */
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
	given: unknown,
): Fault[] {
	const hint = hintsAt(root, path, given);
	return keys.slice(0, MOST).map((key) => ({
		path: [...path, key],
		code: "unknown",
		detail: `${nameOf([...path, key])} is not known; ${hint(key)}`,
	}));
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
	if (closest) return closest.slice(0, MOST).flatMap((inner) => faultsOf(inner, root, given, path));
	return [valueFault("wrong_type", root, path, given)];
}

function valueFault(
	code: Fault["code"],
	root: z.core.$ZodType,
	path: readonly PropertyKey[],
	given: unknown,
): Fault {
	const value = valueAt(given, path);
	const want = expectationAt(root, path, given);
	const name = nameOf(path);
	if (value === undefined) return { path, code: "missing", detail: `${name} is missing: it must be ${want}` };
	const meant = suggestionFor(value, root, path, given);
	const detail = `${name} must be ${want}; ${quoted(value)} is not`;
	return { path, code, detail: meant ? `${detail}; did you mean ${meant}?` : detail };
}

/** A schema's own words; those that begin with "must" lack their subject. */
function ruled(code: Fault["code"], path: readonly PropertyKey[], message: string): Fault {
	return { path, code, detail: message.startsWith("must ") ? `${nameOf(path)} ${message}` : message };
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
	given: unknown,
	base: readonly PropertyKey[],
): Fault[] {
	const path = [...base, ...issue.path];
	switch (issue.code) {
		case "invalid_type":
			return [valueFault("wrong_type", root, path, given)];
		case "invalid_value":
			return [valueFault("not_a_choice", root, path, given)];
		case "unrecognized_keys":
			return unknownKeys(issue.keys, root, path, given);
		case "invalid_union":
			if (issue.discriminator === undefined) return unionFaults(issue, root, path, given);
			return [valueFault("not_a_choice", root, path, given)];
		case "too_big":
		case "too_small":
			if (["number", "int", "bigint"].includes(issue.origin))
				return [valueFault("out_of_bounds", root, path, given)];
			return [lengthFault(issue, path)];
		case "invalid_format":
			if (FORMS[issue.format] === undefined) return [ruled("wrong_format", path, issue.message)];
			return [valueFault("wrong_format", root, path, given)];
		default:
			return [ruled("broken_rule", path, issue.message)];
	}
}

/** Codes of what could not be read as what it should be: no further rule says anything about it. */
const UNREADABLE: ReadonlySet<Fault["code"]> = new Set(["wrong_type", "wrong_format", "not_a_choice"]);

/** Every fault behind a schema's refusal, in sentences a person can act on, each once, up to the limit. */
export function faultsIn(error: z.ZodError, schema: z.ZodType, given: unknown): readonly Fault[] {
	const faults: Fault[] = [];
	const unreadable = new Set<string>();
	for (const issue of error.issues) {
		for (const fault of faultsOf(issue, schema, given, [])) {
			const place = pointerTo(fault.path);
			if (unreadable.has(place)) continue;
			faults.push(fault);
			if (UNREADABLE.has(fault.code)) unreadable.add(place);
		}
		if (faults.length >= MOST) break;
	}
	return faults.slice(0, MOST);
}

/** Every fault that a schema finds in a body, up to the limit; the place of each is a JSON pointer. */
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
