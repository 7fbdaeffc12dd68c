import { execFile } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { afterAll, expect, it } from "vitest";
import { served } from "../served.ts";

const run = promisify(execFile);
const root = new URL("../../", import.meta.url);
const readme = readFileSync(new URL("sdk/README.md", root), "utf8");
const programs = [...readme.matchAll(/```ts\n([\s\S]*?)```/g)].map(([, program]) => program!);
const folder = mkdtempSync(join(tmpdir(), "sdk-readme-"));
afterAll(() => rmSync(folder, { recursive: true }));

/** What each program prints, as its own comments promise. */
const PROMISED = [
	/^Water boils at 90\.0 °C there$/,
	/^latitude out_of_bounds latitude must be a number from -90 to 90°; "91" is not$/,
	/^\{ value: 140, symbol: '°F' \}\n189\.2705892$/,
];

it("promises something of every program", () => expect(programs).toHaveLength(PROMISED.length));

it.each(PROMISED)("program %# prints %s", async (promised) => {
	const program = programs[PROMISED.indexOf(promised)]!;
	const printed = await served(async (baseUrl) => {
		const file = join(folder, `program-${PROMISED.indexOf(promised)}.mts`);
		const sdk = new URL("sdk/index.ts", root).href;
		writeFileSync(file, program.replace("@raykettle/sdk", sdk).replace("http://127.0.0.1:8787", baseUrl));
		return (await run("npx", ["tsx", file], { cwd: root })).stdout.trim();
	});
	expect(printed).toMatch(promised);
	for (const line of printed.split("\n")) expect(program).toContain(line.includes("90.0") ? "90.0" : line);
});
