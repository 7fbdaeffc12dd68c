import { execFile } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { isKey, keysFrom } from "../../../../api/access/keys.ts";

interface Run {
	readonly code: number;
	readonly out: string;
	readonly err: string;
}

const root = fileURLToPath(new URL("../../../../", import.meta.url));

const ran = (command: string, ...words: readonly string[]) =>
	new Promise<Run>((done) => {
		const child = execFile(command, words, { cwd: root }, (_error, out, err) =>
			done({ code: child.exitCode ?? -1, out, err }),
		);
	});

const folder = mkdtempSync(join(tmpdir(), "new-key-"));
const script = join(folder, "new-key.mjs"); // the command's own, as plain JavaScript, which Node starts soon
beforeAll(async () => {
	await build({
		entryPoints: [`${root}api/scripts/new-key.ts`],
		outfile: script,
		...{ bundle: true, platform: "node", format: "esm", target: "node20" },
	});
});
afterAll(() => rmSync(folder, { recursive: true }));

const run = (...options: readonly string[]) => ran(process.execPath, script, ...options);

const fresh = async (...options: readonly string[]) => {
	const { code, out, err } = await run(...options);
	expect({ code, err }).toEqual({ code: 0, err: "" });
	const keys = out.match(/rk_\w+_[\w-]{43}/g) ?? [];
	expect(keys).toHaveLength(1); // once
	return { key: keys[0]!, entry: JSON.parse(out.slice(out.indexOf("\n{"))) as Record<string, unknown> };
};

describe("new-key", () => {
	it("prints a publishable key and the entry that a keys file takes", async () => {
		const origin = "https://www.cedar-row.example";
		const { key, entry } = await fresh(
			...["--kind", "publishable", "--id", "cedar-row-web", "--origin", origin],
			...["--origin", "http://localhost:5173", "--requests", "120"],
		);
		expect(isKey(key)).toBe(true);
		expect(entry).toEqual({
			id: "cedar-row-web",
			kind: "publishable",
			sha256: createHash("sha256").update(key).digest("hex"),
			origins: [origin, "http://localhost:5173"],
			requests: 120,
		});
		expect(keysFrom(JSON.stringify({ keys: [entry] }))).toHaveLength(1);
	});

	it("prints a secret key, another at each call, and reads --name=value", async () => {
		const [one, two] = await Promise.all([1, 2].map(() => fresh("--kind=secret", "--id=quotes")));
		expect(one!.key).toMatch(/^rk_secret_/);
		expect(one!.key).not.toBe(two!.key);
		expect(Object.keys(one!.entry)).toEqual(["id", "kind", "sha256"]);
	});

	it("tells how it is used", async () => {
		const { code, out } = await ran("npm", "run", "--silent", "new-key", "--", "--help");
		expect(code).toBe(0);
		for (const option of ["--kind", "--id", "--origin", "--requests"]) expect(out).toContain(option);
	});

	it.each([
		[[], "--id is missing", '--kind is missing: it must be one of "secret" or "publishable"'],
		[["--kind", "publishable", "--id", "web"], "--origin must list the origins"],
		[
			["--kind", "secret", "--id", "a b", "--origin", "https://x.example"],
			"--id must be",
			"--origin must be omitted",
		],
		[["--kind", "secret", "--id", "a", "--requests", "1e3"], "--requests must be a whole number"],
		[["--kind", "secret", "--id"], "--id"],
		[["--kind", "--id", "a"], "--kind"],
		[["--id", "a", "--id", "b"], "--id is repeated"],
		[["--scope", "all"], "--scope"],
		[["secret"], "'secret'"],
	])("%j ends with 2, a sentence and no key", async (options, ...words) => {
		const { code, out, err } = await run(...options);
		expect({ code, out }).toEqual({ code: 2, out: "" });
		for (const part of words) expect(err).toContain(part);
		expect(err).not.toMatch(/rk_|\bat \S+:\d+/); // neither a key nor a stack
	});
});
