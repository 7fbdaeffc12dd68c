import { readFileSync } from "node:fs";
import ts from "typescript";
import { expect, it } from "vitest";
import { methodName } from "../../openapi/sdk-operations.ts";
import { OPERATIONS } from "../../sdk/operations.ts";

type Text = { readonly operationId?: string; readonly summary?: string; readonly description?: string };
const { paths } = JSON.parse(
	readFileSync(new URL("../../openapi/openapi.json", import.meta.url), "utf8"),
) as { readonly paths: Readonly<Record<string, { readonly get?: Text; readonly post?: Text }>> };
const root = new URL("../../", import.meta.url).pathname;
const HEAD = `import { createRaykettle } from "./sdk/index.ts";
const raykettle = createRaykettle({ baseUrl: "http://service.test" });
`;

/** What an editor asks of: the project's files, and programs that exist in memory alone. */
const programs = new Map<string, string>();
const { options } = ts.parseJsonConfigFileContent(
	ts.readConfigFile(`${root}tsconfig.json`, ts.sys.readFile).config,
	ts.sys,
	root,
);
const service = ts.createLanguageService({
	...ts.sys,
	useCaseSensitiveFileNames: () => true,
	getCompilationSettings: () => options,
	getScriptFileNames: () => [...programs.keys()],
	getScriptVersion: () => "1",
	getScriptSnapshot: (name) => {
		const text = programs.get(name) ?? ts.sys.readFile(name);
		return text === undefined ? undefined : ts.ScriptSnapshot.fromString(text);
	},
	getCurrentDirectory: () => root,
	getDefaultLibFileName: ts.getDefaultLibFilePath,
	fileExists: (name) => programs.has(name) || ts.sys.fileExists(name),
});

/** A program in an editor, its cursor where the code has a bar. */
function editor(code: string) {
	const file = `${root}program-${programs.size}.ts`;
	programs.set(file, HEAD + code.replace("|", ""));
	return { file, cursor: HEAD.length + code.indexOf("|") };
}

function completions(code: string) {
	const { file, cursor } = editor(code);
	return service.getCompletionsAtPosition(file, cursor, {})?.entries.map(({ name }) => name);
}

/** The lines of a program that the compiler refuses. */
function refused(lines: readonly string[]) {
	const { file } = editor(lines.join("\n"));
	const starts = service.getSemanticDiagnostics(file).map(({ start = 0 }) => start);
	const text = programs.get(file)!;
	return new Set(starts.map((start) => text.slice(HEAD.length, start).split("\n").length - 1));
}

it.each([
	["raykettle.warmUpTank({ | })", ["site", "date", "dish", "receiver", "loop", "coil", "tank"]],
	["raykettle.warmUpTank({ dish: { | } })", ["kind", "diameterM", "reflectance"]],
	["raykettle.sunDay({ | })", ["latitude", "longitude", "date", "timeZone"]],
	["raykettle.boilingPoint({ | })", ["elevationM", "pressureKpa"]],
	['raykettle.fluid({ id: "|" })', ["water", "propyleneGlycol40"]],
	["raykettle.meta({ | })", ["signal", "timeoutMs", "retries", "requestId"]],
	['raykettle.meta({}, "|")', undefined],
	["raykettle.sunDay({ latitude: 1, longitude: 2, date: '2025-01-01' }, { | })", ["as", "signal"]],
	["raykettle.sunDay({ latitude: 1 }, { as: '|' })", ["image/svg+xml", "text/csv"]],
])("an editor completes %s", (code, names) => {
	const completed = completions(code);
	if (names === undefined) expect(completed).toBeUndefined();
	else expect(completed).toEqual(expect.arrayContaining(names));
	expect(completed ?? []).not.toContain("AbortController"); // a global: what is offered where nothing is known
});

it("an editor completes the operation of a batch's item", () => {
	const completed = completions('raykettle.runBatch({ items: [{ operation: "|" }] })');
	expect(completed).toEqual(expect.arrayContaining(["warmUpTank", "getBoilingPoint", "rankImprovements"]));
	expect(completed).not.toContain("runBatch");
});

it("an editor shows the contract's text of every method, at its name and within its brackets", () => {
	for (const entry of Object.values(paths))
		for (const { operationId, summary, description } of [entry.get ?? {}, entry.post ?? {}]) {
			if (operationId === undefined) continue;
			const { file, cursor } = editor(`raykettle.${methodName(operationId)}(|)`);
			const hover = service.getQuickInfoAtPosition(file, cursor - 2);
			const help = service.getSignatureHelpItems(file, cursor, {})?.items[0];
			for (const shown of [hover, help]) {
				const text = ts.displayPartsToString(shown?.documentation as ts.SymbolDisplayPart[]);
				expect(text).toContain(summary);
				expect(text).toContain(description?.split("\n")[0] ?? summary);
			}
		}
});

it("a method takes no input where no field of it is required, and only there", () => {
	const names = Object.keys(OPERATIONS);
	const without = refused(names.map((name) => `raykettle.${name}();`));
	const empty = refused(names.map((name) => `raykettle.${name}({});`));
	expect(without).toEqual(empty);
	const optional = names.filter((_, i) => !without.has(i));
	expect(optional).toEqual(expect.arrayContaining(["boilingPoint", "meta"]));
	for (const name of ["sunDay", "fluid", "warmUpTank", "runBatch"]) expect(optional).not.toContain(name);
});

it("an answer has the type of its form", () => {
	const sunDay = "raykettle.sunDay({ latitude: 1, longitude: 2, date: '2025-01-01' }";
	const lines = [
		`${sunDay}).then(({ sunrise }) => sunrise);`,
		`${sunDay}, { retries: 0 }).then(({ sunrise }) => sunrise);`,
		`${sunDay}, { as: "text/csv" }).then((table) => table.split("\\n"));`,
		`${sunDay}).then((answer) => answer.split("\\n"));`,
		`${sunDay}, { as: "text/csv" }).then(({ sunrise }) => sunrise);`,
		`${sunDay}, { as: "image/png" });`,
		'raykettle.meta({ as: "text/csv" });',
	];
	expect([...refused(lines)]).toEqual([3, 4, 5, 6]);
});
