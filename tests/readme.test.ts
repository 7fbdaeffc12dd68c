import { execFile } from "node:child_process";
import { readFileSync } from "node:fs";
import { promisify } from "node:util";
import { expect, it } from "vitest";
import { operations } from "../api/operations/index.ts";
import { printed } from "./printed.ts";
import { readmeWithExample } from "./readme.ts";
import { served } from "./served.ts";

const root = new URL("../", import.meta.url);
const readme = readFileSync(new URL("README.md", root), "utf8");
const run = promisify(execFile);

it("shows the answer that the service gives", async () => {
	expect(await readmeWithExample(readme)).toBe(readme);
});

it("shows a command that runs as printed", async () => {
	const command = /```sh\n(curl [\s\S]*?)\n```/.exec(readme)?.[1];
	if (!command) throw new Error("README.md shows no curl command");
	const answer = await served(async (baseUrl) => {
		const { stdout } = await run("sh", ["-c", command.replace("http://127.0.0.1:8787", baseUrl)]);
		return JSON.parse(stdout) as { outcome: string; targetTime: string };
	});
	expect(answer.outcome).toBe("reached");
	expect(readme).toContain(answer.targetTime);
});

it("shows a program that runs as printed", async () => {
	const program = /```ts\n([\s\S]*?)```/.exec(readme)?.[1];
	if (!program) throw new Error("README.md shows no program");
	expect(await printed(program)).toMatch(/^2026-01-15T\d\d:\d\d:\d\d\+01:00 \d+/);
});

it("lists every operation of the contract", () => {
	for (const { method, path } of operations)
		expect(readme, `${method.toUpperCase()} ${path}`).toContain(`\`${method.toUpperCase()} ${path}\``);
});
