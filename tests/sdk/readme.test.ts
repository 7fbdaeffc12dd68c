import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { printed } from "../printed.ts";

const readme = readFileSync(new URL("../../sdk/README.md", import.meta.url), "utf8");
const programs = [...readme.matchAll(/```ts\n([\s\S]*?)```/g)].map(([, program]) => program!);

/** What each program prints, as its own comments promise. */
const PROMISED = [
	/^Water boils at 90\.0 °C there$/,
	/^latitude out_of_bounds latitude must be a number from -90 to 90°; "91" is not$/,
	/^\{ value: 140, symbol: '°F' \}\n189\.2705892$/,
	/^A 2350 m de altitud .+\n\/tank\/volumeL is required\.\n\S+ \S+$/,
];

it("promises something of every program", () => expect(programs).toHaveLength(PROMISED.length));

it.each(PROMISED)("program %# prints %s", async (promised) => {
	const program = programs[PROMISED.indexOf(promised)]!;
	const text = (await printed(program)).replaceAll("\u00a0", " ");
	expect(text).toMatch(promised);
	for (const line of text.split("\n")) expect(program).toContain(line.includes("90.0") ? "90.0" : line);
});
