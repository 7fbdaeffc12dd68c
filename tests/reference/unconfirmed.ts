import { sourcesIn } from "../sources.ts";
import { capital, tableRow } from "./errors.ts";
import type { ReferenceFile } from "./load.ts";

/** A value or formula that was written from memory and not confirmed. */
export interface Unconfirmed {
	readonly file: string;
	readonly subject: string;
}

const MARK = /from memory/i;
const FOLDERS = ["src", "api", "tests"];
/** What speaks of marks instead of bearing one. */
const REGISTER = new Set(
	["accuracy.ts", "accuracy-table.ts", "accuracy-summary.ts", "reference.ts", "reference.test.ts"]
		.concat("unconfirmed.ts", "unconfirmed.test.ts")
		.map((name) => `tests/reference/${name}`),
);
const SLOT = /^\s*\*\s+(?:Source|Error|Range|Check|@\w+)\b/;
const CONTINUED = /^\s*\*\s/;

/** The line of a mark in plain words; of a doc block's slot all that stands before the mark. */
function subjectAt(lines: readonly string[], at: number): string {
	let first = at;
	while (CONTINUED.test(lines[first]!) && !SLOT.test(lines[first]!) && CONTINUED.test(lines[first - 1] ?? ""))
		first--;
	return lines
		.slice(first, at + 1)
		.map((line) => line.trim().replace(/^(?:\/\*\*|\*\/?|\/\/)\s*/, ""))
		.join(" ")
		.replace(/\s*\*\/$/, "")
		.replace(/^"|",?;?$/g, "")
		.replace(/\s+/g, " ");
}

/** Every mark in the sources, by file and line. */
export function markedSources(): readonly Unconfirmed[] {
	return FOLDERS.flatMap((folder) => sourcesIn(folder))
		.filter(({ path }) => !REGISTER.has(path))
		.sort((a, b) => (a.path < b.path ? -1 : 1))
		.flatMap(({ path, text }) => {
			const lines = text.split("\n");
			return lines.flatMap((line, i) =>
				MARK.test(line) ? [{ file: path, subject: subjectAt(lines, i) }] : [],
			);
		});
}

/** Every set with expected values from memory. */
export function rememberedSets(files: readonly ReferenceFile[]): readonly Unconfirmed[] {
	return files.flatMap(({ file, sets }) =>
		sets.flatMap(({ quantity, rows }) => {
			const remembered = rows.filter(({ kind }) => kind === "memory");
			if (remembered.length === 0) return [];
			const sources = [...new Set(remembered.map(({ source }) => source))].join("; ");
			const subject = `${capital(quantity)}, ${remembered.length} of ${rows.length}: ${sources}`;
			return [{ file: `tests/reference/${file}`, subject }];
		}),
	);
}

/** The register of unconfirmed values, as tests/reference/UNCONFIRMED.md has it. */
export function register(files: readonly ReferenceFile[]): string {
	const marks = markedSources();
	const sets = rememberedSets(files);
	const table = (entries: readonly Unconfirmed[]) => [
		"| file | subject |",
		"|---|---|",
		...entries.map(({ file, subject }) => tableRow([`\`${file}\``, subject.replaceAll("`", "")])),
	];
	return [
		"# Unconfirmed values",
		"",
		"Written by `npm run accuracy` from the marks in the sources. Whoever confirms one names the confirming source beside the value and takes",
		"the mark away. Where the kind of a value matters to a caller, the answer says it too.",
		"",
		`## In the code: ${marks.length}`,
		"",
		...table(marks),
		"",
		`## Expected values: ${sets.length} quantities`,
		"",
		...table(sets),
		"",
	].join("\n");
}
