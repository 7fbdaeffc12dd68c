import { sourcesIn } from "../sources.ts";
import { capital, tableRow } from "./errors.ts";
import type { ReferenceFile } from "./load.ts";

/** A value or formula that was written from memory and not confirmed. */
export interface Unconfirmed {
	readonly file: string;
	readonly subject: string;
}

/** A comment beside a value, or the field that carries the same to a caller. */
const MARK = /from memory|\bconfirmed: false\b/i;
const FIELD = /\bconfirmed: false\b/;
const INDENT = /^\t*/;
const ONE_LINE = /^\s*\w+: \{.*\},?$/;
const OPENING = /^(?:export )?(?:const )?(\w+)(?:: \w+)?(?: =|:) \{/;
const NOTE = /\/\/ (.*)$/;
const QUOTED = /\b(?:name|reason|source):\s*["`]([^"`]*)["`]/g;
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

const depthOf = (line: string) => INDENT.exec(line)![0].length;

/** The lines of the record that a field belongs to, without the records inside it: one line where the record is on one. */
function recordLines(lines: readonly string[], at: number): readonly string[] {
	if (ONE_LINE.test(lines[at]!)) return [lines[at]!];
	const depth = depthOf(lines[at]!);
	let first = at;
	while (first > 0 && depthOf(lines[first - 1]!) >= depth) first--;
	let last = at;
	while (last + 1 < lines.length && depthOf(lines[last + 1]!) >= depth) last++;
	const own = (line: string, i: number) =>
		!ONE_LINE.test(line) && (depthOf(line) === depth || lines[i - 1]!.endsWith(":"));
	return lines.slice(first - 1, last + 1).filter((line, i) => i === 0 || own(line, first - 1 + i));
}

/** Name, reason and source of the record that a field belongs to, and the note beside the field. */
function recordAt(lines: readonly string[], at: number): string {
	const record = recordLines(lines, at);
	const opening = OPENING.exec(record[0]!.trim())?.[1] ?? "";
	const texts = [...record.join("\n").matchAll(QUOTED)].map(([, text]) => text!);
	const note = NOTE.exec(lines[at]!)?.[1] ?? "";
	return [opening, ...texts, note].filter((text) => text !== "").join("; ");
}

/** Every mark in the sources, by file and line. */
export function markedSources(): readonly Unconfirmed[] {
	return FOLDERS.flatMap((folder) => sourcesIn(folder))
		.filter(({ path }) => !REGISTER.has(path))
		.sort((a, b) => (a.path < b.path ? -1 : 1))
		.flatMap(({ path, text }) => {
			const lines = text.split("\n");
			return lines.flatMap((line, i) =>
				MARK.test(line)
					? [{ file: path, subject: FIELD.test(line) ? recordAt(lines, i) : subjectAt(lines, i) }]
					: [],
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
		'Written by `npm run accuracy` from the marks in the sources: comments that say "from memory", and records with `confirmed: false`, which',
		"answers carry to callers. To confirm a value, name the confirming source beside it and remove its marks.",
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
