import { readFileSync } from "node:fs";
import ts from "typescript";
import { expect, it } from "vitest";
import { sourcesIn } from "../sources.ts";
import { referenceFiles } from "./load.ts";
import { register } from "./unconfirmed.ts";

const committed = readFileSync(new URL("UNCONFIRMED.md", import.meta.url), "utf8");
const ABOUT_MARKS = /^tests\/reference\/(accuracy|reference|unconfirmed)[\w-]*(\.test)?\.ts$/;

it("is what the sources say", async () => {
	expect(register(await referenceFiles())).toBe(committed);
});

it("has a line for every mark in the sources", () => {
	for (const folder of ["src", "api", "tests"])
		for (const { path, text } of sourcesIn(folder)) {
			if (ABOUT_MARKS.test(path)) continue;
			const marks = text.split("\n").filter((line) => /from memory|\bconfirmed: false\b/i.test(line)).length;
			const code = committed.split("## Expected values")[0]!;
			expect(code.split(`| \`${path}\` |`).length - 1, path).toBe(marks);
		}
});

it("has a line for every quantity with expected values from memory", async () => {
	const expected = committed.split("## Expected values")[1]!;
	for (const { file, sets } of await referenceFiles())
		for (const { quantity, rows } of sets)
			if (rows.some(({ kind }) => kind === "memory"))
				expect(expected.toLowerCase(), quantity).toContain(
					`| \`tests/reference/${file}\` | ${quantity},`.toLowerCase(),
				);
});

/** The texts of a source file, templates among them, that say where a value comes from in prose. */
function proseIn(path: string, text: string): readonly string[] {
	const found: string[] = [];
	const visit = (node: ts.Node): void => {
		if (ts.isStringLiteralLike(node) || ts.isTemplateExpression(node))
			if (/from memory|no source|common practice/i.test(node.getText()))
				found.push(`${path}: ${node.getText()}`);
		ts.forEachChild(node, visit);
	};
	visit(ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true));
	return found;
}

it("the core states provenance as data, never in a text", () => {
	expect(sourcesIn("src").flatMap(({ path, text }) => proseIn(path, text))).toEqual([]);
	expect(
		proseIn("planted.ts", 'const source = "Duffie & Beckman (from memory)"; // from memory'),
	).toHaveLength(1);
});
