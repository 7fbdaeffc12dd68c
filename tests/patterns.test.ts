import { z } from "@hono/zod-openapi";
import { analyse } from "scslre";
import ts from "typescript";
import { expect, it } from "vitest";
import { operations } from "../api/operations/index.ts";
import { sourcesIn } from "./sources.ts";

// A pattern takes time by the square of a text's length, or worse, where two repeats side by side can share out the same signs,
// or where it looks for an end from each sign anew. The analysis finds both as far as one sign repeated shows them;
// `unit/api/hostile-lengths.test.ts` times what a caller can send.

interface Pattern {
	readonly where: string;
	readonly source: string;
	readonly flags: string;
}

/** A pattern as it is written: `/a+/i`. */
function written(where: string, literal: string): Pattern {
	const end = literal.lastIndexOf("/");
	return { where, source: literal.slice(1, end), flags: literal.slice(end + 1) };
}

/** Whether a text of some length can hold a pattern up. */
const isSlow = ({ source, flags }: Pattern) =>
	analyse({ source, flags }, { maxReports: 1 }).reports.length > 0;

const files = ["api", "sdk"]
	.flatMap(sourcesIn)
	.map(({ path, text }) => ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true));

/** Every node of the sources that a look at it makes something of. */
function found<T>(look: (node: ts.Node) => T | undefined): readonly T[] {
	const all: T[] = [];
	const visit = (node: ts.Node): void => {
		const one = look(node);
		if (one !== undefined) all.push(one);
		ts.forEachChild(node, visit);
	};
	files.forEach(visit);
	return all;
}

const pathOf = (node: ts.Node) => node.getSourceFile().fileName;
const literals = found((node) =>
	ts.isRegularExpressionLiteral(node) ? written(pathOf(node), node.text) : undefined,
);

/** The patterns that a schema holds texts against, those of its formats among them. */
function patternsIn(value: unknown): readonly string[] {
	if (typeof value !== "object" || value === null) return [];
	return Object.entries(value).flatMap(([key, inner]) =>
		key === "pattern" && typeof inner === "string" ? [inner] : patternsIn(inner),
	);
}

const ofSchemas = operations.flatMap(({ operationId, input }) =>
	patternsIn(z.toJSONSchema(input, { io: "input", unrepresentable: "any" })).map(
		(source): Pattern => ({ where: operationId, source, flags: "u" }),
	),
);

it("every pattern of the service and the SDK takes time by a text's length alone", () => {
	expect(literals.length).toBeGreaterThan(30);
	expect(literals.filter(isSlow)).toEqual([]);
});

it("so does every pattern that a schema holds a caller's text against", () => {
	expect(ofSchemas.some(({ source }) => source.includes("02-29"))).toBe(true); // a date's, leap years and all
	expect(ofSchemas.filter(isSlow)).toEqual([]);
});

it.each([
	[
		"digits that may stand on either side of a point left out",
		String.raw`/^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i`,
	],
	["blanks around what may be left out", String.raw`/^json\s*(?:;\s*charset\s*=\s*"?utf-8"?\s*)?;?\s*$/i`],
	["an end looked for from every sign", String.raw`/\/+$/`],
	["repeats in a repeat", "/^(?:a+)+$/"],
])("the analysis finds %s", (_what, literal) => {
	expect(isSlow(written("here", literal))).toBe(true);
});

it("a pattern is written out, where the analysis sees it", () => {
	const made = found((node) => {
		const isMade =
			(ts.isNewExpression(node) || ts.isCallExpression(node)) && node.expression.getText() === "RegExp";
		return isMade ? pathOf(node) : undefined;
	});
	expect(made).toEqual([]);
});
