/** The README's one real call: the body it shows, and the answer that the service gives to it. `npm run examples` writes it. */
import { readFileSync, writeFileSync } from "node:fs";
import { createApp } from "../api/app.ts";
import { operations } from "../api/operations/index.ts";

const BEGIN = "<!-- example: written by `npm run examples` -->";
const END = "<!-- /example -->";
const OPERATIONS = "<!-- operations: written by `npm run examples` -->";
const END_OPERATIONS = "<!-- /operations -->";
const file = new URL("../README.md", import.meta.url);

const BODY = `{
	"site": { "latitude": 31.2, "longitude": -7.9, "elevationM": 2350 },
	"date": "2026-01-15",
	"dish": { "diameterM": 2 },
	"tank": { "volumeL": 150 }
}`;

/** Long lists that the README does not repeat, each with what it says instead. */
const SHORTENED: Readonly<Record<string, (list: { length: number }) => string>> = {
	layerTemperaturesC: (list) => `${list.length} layers, top first`,
	series: () => "columns over the day, a row each quarter of an hour",
	cautions: (list) => `${list.length} cautions, each with code, severity, parameters and a sentence`,
	assumed: (list) => `${list.length} values that were left out, each with what was taken and why`,
	methods: (list) => `${list.length} models, each with its source and whether it ran outside its range`,
	design: () => "the plant as computed, with every size that followed from another",
};

/** The answer as the README prints it: every field, long lists described. */
export async function readmeAnswer(body: string): Promise<string> {
	const app = createApp({
		indexPage: undefined,
		onFailure: (error) => {
			throw error;
		},
	});
	const headers = { "Content-Type": "application/json", "Content-Length": String(Buffer.byteLength(body)) };
	const response = await app.request("/v1/tank/warm-up", { method: "POST", headers, body });
	const answer = (await response.json()) as Record<string, { length: number }>;
	const shown = Object.entries(answer).map(([key, value]) => [key, SHORTENED[key]?.(value) ?? value]);
	return JSON.stringify(Object.fromEntries(shown), null, "\t");
}

/** A text with what stands between two markers written anew. */
function between(before: string, begin: string, end: string, inside: string): string {
	const [head, rest] = before.split(begin);
	const tail = rest?.split(end)[1];
	if (head === undefined || tail === undefined) throw new Error(`README.md lacks the markers ${begin}`);
	return `${head}${begin}\n${inside}\n${end}${tail}`;
}

/** One line for each operation, in the contract's own words. */
function operationTable(): string {
	const lines = operations.map(({ method, path, summary, description }) => {
		const clause = description.replaceAll("\n", " ").split(/[.;:]\s|[.;:]$/)[0];
		return `| \`${method.toUpperCase()} ${path}\` | ${summary} | ${clause} |`;
	});
	return [
		"| operation | what for | what it answers |",
		"|---|---|---|",
		...lines,
		"| `GET /openapi.json` | The contract | OpenAPI 3.1, with an example on every operation |",
	].join("\n");
}

/** The README with its example and its list of operations written anew. */
export async function readmeWithExample(before: string): Promise<string> {
	const example = [
		"With the service running (`npm start`):",
		"",
		"```sh",
		`curl http://127.0.0.1:8787/v1/tank/warm-up -H 'Content-Type: application/json' -d '${BODY}'`,
		"```",
		"",
		"answers (long lists described here in words):",
		"",
		"```json",
		await readmeAnswer(BODY),
		"```",
	].join("\n");
	return between(between(before, BEGIN, END, example), OPERATIONS, END_OPERATIONS, operationTable());
}

if (process.argv[1] === import.meta.filename)
	writeFileSync(file, await readmeWithExample(readFileSync(file, "utf8")));
