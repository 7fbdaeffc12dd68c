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
	"date": "2026-01-15", "dish": { "diameterM": 2 }, "tank": { "volumeL": 150 }
}`;

/** The fields of the answer that the README shows; of a long one, a description in words. */
const SHOWN: Readonly<Record<string, true | ((field: { length: number }) => string)>> = {
	outcome: true,
	targetTime: true,
	timeToTargetMin: true,
	endTemperatureC: true,
	boilingPointC: true,
	usableLitresAt40C: true,
	energyBalance: () => "where every kilowatt-hour of the beam went, in terms that add up",
	series: () => "temperatures, sun, flow and power through the day, a row each quarter of an hour",
	cautions: (list) => `${list.length} safety notes, each with code, severity, parameters and a sentence`,
	assumed: (list) => `${list.length} omitted fields, each with the value used and the reason for it`,
	methods: (list) => `${list.length} models, each with its source`,
};

/** The answer as the README prints it. */
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
	const shown = Object.entries(SHOWN).map(([key, show]) => {
		const value = answer[key];
		if (value === undefined) throw new Error(`the answer has no ${key}`);
		return [key, show === true ? value : show(value)];
	});
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
		"```sh",
		`curl http://127.0.0.1:8787/v1/tank/warm-up -H 'Content-Type: application/json' -d '${BODY}'`,
		"```",
		"The answer, some of its fields described in words:",
		"```json",
		await readmeAnswer(BODY),
		"```",
	].join("\n");
	return between(between(before, BEGIN, END, example), OPERATIONS, END_OPERATIONS, operationTable());
}

if (process.argv[1] === import.meta.filename)
	writeFileSync(file, await readmeWithExample(readFileSync(file, "utf8")));
