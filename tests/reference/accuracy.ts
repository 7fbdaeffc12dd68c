/** Writes the accuracy table in the README from the reference rows; with --check it only fails where the table is out of date. */
import { readFileSync, writeFileSync } from "node:fs";
import { referenceSets } from "./load.ts";
import { allowedError, type ReferenceSet } from "./reference.ts";

const BEGIN = "<!-- accuracy: written by `npm run accuracy` -->";
const END = "<!-- /accuracy -->";
const readme = new URL("../../README.md", import.meta.url);

function figure(value: number): string {
	if (value === 0) return "0";
	return value < 1e-12 ? "< 1e-12" : String(Number(value.toPrecision(2)));
}

function line(set: ReferenceSet): string {
	const errors = set.rows.map((row) => Math.abs(row.computed() - row.published));
	const shares = set.rows.map((row, i) => errors[i]! / allowedError(row));
	const worst = Math.max(...errors);
	const mean = errors.reduce((sum, e) => sum + e, 0) / errors.length;
	const widest = Math.max(...set.rows.map(allowedError));
	const used = Math.round(100 * Math.max(...shares));
	const remembered = set.rows.filter((row) => row.fromMemory).length;
	const unit = set.unit === "-" ? "" : ` ${set.unit}`;
	const sources = [...new Set(set.rows.map((row) => row.source))];
	const cited = sources[0] + (sources.length > 1 ? `; and ${sources.length - 1} more` : "");
	const cells = [
		set.quantity.charAt(0).toUpperCase() + set.quantity.slice(1),
		cited + (remembered > 0 ? ` (${remembered} from memory)` : ""),
		String(set.rows.length),
		figure(mean) + unit,
		figure(worst) + unit,
		figure(widest) + unit,
		`${used} %`,
	];
	return `| ${cells.map((cell) => cell.replaceAll("|", "\\|")).join(" | ")} |`;
}

const HEAD = [
	"| quantity | published in | cases | mean error | worst error | widest tolerance | most of a tolerance used |",
	"|---|---|---|---|---|---|---|",
];

/** What a caller asks about first; every other quantity stands in the fold below. */
const FOREMOST = new Set([
	"Sun position",
	"Sunrise, noon and sunset",
	"Clear-sky irradiance",
	"Clear-sky beam at 1829 m",
	"Boiling point by elevation",
	"Elevation from the boiling point",
	"Dish: intercept factor",
	"Heat capacity of water",
	"whole examples of oil in pipes",
	"Tank: outlet's excess after a draw through mixed layers",
	"Time to target against the closed form",
]);

const sets = await referenceSets();
const cases = sets.reduce((sum, set) => sum + set.rows.length, 0);
for (const quantity of FOREMOST)
	if (!sets.some((set) => set.quantity === quantity)) throw new Error(`no reference values of ${quantity}`);
const table = [
	`${sets.length} quantities are held against ${cases} published values. The foremost:`,
	"",
	...HEAD,
	...sets.filter((set) => FOREMOST.has(set.quantity)).map(line),
	"",
	`<details><summary>The other ${sets.length - FOREMOST.size} quantities</summary>`,
	"",
	...HEAD,
	...sets.filter((set) => !FOREMOST.has(set.quantity)).map(line),
	"",
	"</details>",
].join("\n");
const before = readFileSync(readme, "utf8");
const [head, rest] = before.split(BEGIN);
const tail = rest?.split(END)[1];
if (head === undefined || tail === undefined)
	throw new Error("README.md lacks the markers of the accuracy table");
const after = `${head}${BEGIN}\n${table}\n${END}${tail}`;
if (process.argv.includes("--check")) {
	if (after !== before) {
		console.error("The accuracy table in README.md is out of date: run `npm run accuracy`.");
		process.exit(1);
	}
	console.log(`The accuracy table is true: ${sets.length} quantities, ${cases} published values.`);
} else {
	writeFileSync(readme, after);
	console.log(`Wrote the accuracy table: ${sets.length} quantities, ${cases} published values.`);
}
