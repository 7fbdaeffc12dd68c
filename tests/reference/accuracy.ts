/** Writes ACCURACY.md, UNCONFIRMED.md and the README's summary from the reference rows; with --check it only fails where one is out of date. */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { accuracySummary } from "./accuracy-summary.ts";
import { accuracyTable } from "./accuracy-table.ts";
import { referenceFiles } from "./load.ts";
import { register } from "./unconfirmed.ts";

const BEGIN = "<!-- accuracy: written by `npm run accuracy` -->";
const END = "<!-- /accuracy -->";
const readme = new URL("../../README.md", import.meta.url);

function readmeWith(summary: string): string {
	const [head, rest] = readFileSync(readme, "utf8").split(BEGIN);
	const tail = rest?.split(END)[1];
	if (head === undefined || tail === undefined)
		throw new Error("README.md lacks the markers of the accuracy table");
	return `${head}${BEGIN}\n${summary}\n${END}${tail}`;
}

const files = await referenceFiles();
const sets = files.flatMap((file) => file.sets);
const texts: readonly (readonly [URL, string])[] = [
	[new URL("ACCURACY.md", import.meta.url), accuracyTable(sets)],
	[new URL("UNCONFIRMED.md", import.meta.url), register(files)],
	[readme, readmeWith(accuracySummary(sets))],
];
const stale = texts.filter(([file, text]) => !existsSync(file) || readFileSync(file, "utf8") !== text);
const names = stale.map(([file]) => file.pathname.split("/").at(-1)).join(", ");
const rows = sets.reduce((sum, set) => sum + set.rows.length, 0);
if (!process.argv.includes("--check")) {
	for (const [file, text] of stale) writeFileSync(file, text);
	console.log(`${rows} values of ${sets.length} quantities; wrote ${names || "nothing, all is up to date"}.`);
} else if (stale.length > 0) {
	console.error(`Out of date: ${names}. Run \`npm run accuracy\`.`);
	process.exit(1);
} else {
	console.log(`The accuracy table is true: ${rows} values of ${sets.length} quantities.`);
}
