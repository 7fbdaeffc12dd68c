import { execFile } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { served } from "../served.ts";

const run = promisify(execFile);
const root = new URL("../../", import.meta.url).pathname;
const bin = (name: string) => join(root, "node_modules/.bin", name);

const PROGRAM = `import { createRaykettle, RaykettleProblem } from "@raykettle/sdk";

export async function asked(baseUrl: string): Promise<string> {
	const raykettle = createRaykettle({ baseUrl, timeoutMs: 5000 });
	const { boilingPointC } = await raykettle.boilingPoint({ elevationM: 3000 });
	// @ts-expect-error a name that the contract does not hold
	const error = await raykettle.boilingPoint({ height: 3000 }).catch((caught: unknown) => caught);
	return [boilingPointC.toFixed(1), error instanceof RaykettleProblem && error.errors[0]?.code].join(" ");
}
`;

/** An empty project into which the packed SDK was installed, as its user has it. */
let project: string;

beforeAll(async () => {
	project = mkdtempSync(join(tmpdir(), "sdk-user-"));
	const copy = join(project, "sdk"); // packed from a copy, so that no test run meets another's build
	mkdirSync(copy);
	for (const name of readdirSync(join(root, "sdk")))
		if (name !== "dist" && name !== "node_modules")
			cpSync(join(root, "sdk", name), join(copy, name), { recursive: true });
	cpSync(join(root, "tsconfig.json"), join(project, "tsconfig.base.json"));
	const config = readFileSync(join(copy, "tsconfig.json"), "utf8").replace(
		"../tsconfig.json",
		"../tsconfig.base.json",
	);
	writeFileSync(join(copy, "tsconfig.json"), config);
	const env = { ...process.env, PATH: `${join(root, "node_modules/.bin")}:${process.env.PATH}` };
	const { stdout } = await run("npm", ["pack", "--json", "--pack-destination", project], { cwd: copy, env });
	const [{ filename }] = JSON.parse(stdout) as [{ filename: string }];
	writeFileSync(join(project, "package.json"), '{ "type": "module", "private": true }');
	await run("npm", ["install", "--offline", "--no-audit", "--no-fund", join(project, filename)], {
		cwd: project,
	});
	writeFileSync(join(project, "program.ts"), PROGRAM);
});

afterAll(() => rmSync(project, { recursive: true, force: true }));

const bundled = async (contents: string, platform: "browser" | "node") => {
	const { outputFiles } = await build({
		stdin: { contents, resolveDir: project, loader: "ts" },
		...{ bundle: true, minify: true, write: false, format: "esm", target: "es2022", platform },
	});
	return outputFiles[0]!.text;
};

describe("the packed SDK in an empty project", () => {
	it.each(["NodeNext", "Bundler"])("type-checks with module resolution %s", async (resolution) => {
		const module = resolution === "Bundler" ? "ESNext" : "NodeNext";
		const lib = ["ES2022", "DOM", "DOM.Iterable"];
		const strict = {
			strict: true,
			noEmit: true,
			target: "ES2022",
			types: [],
			exactOptionalPropertyTypes: true,
		};
		const compilerOptions = { ...strict, module, moduleResolution: resolution, lib };
		writeFileSync(join(project, "tsconfig.json"), JSON.stringify({ compilerOptions, files: ["program.ts"] }));
		await run(bin("tsc"), ["-p", "tsconfig.json"], { cwd: project }).catch(({ stdout }) => {
			throw new Error(stdout);
		});
	});

	it("runs in Node", async () => {
		const text = await bundled('export { asked } from "./program.ts"', "node");
		writeFileSync(join(project, "program.js"), text);
		const printed = await served(async (baseUrl) => {
			const script = `import { asked } from "./program.js"; console.log(await asked("${baseUrl}"))`;
			return (await run("node", ["--input-type=module", "-e", script], { cwd: project })).stdout;
		});
		expect(printed.trim()).toBe("90.0 unknown");
	});

	it("runs unbundled in Node", async () => {
		const printed = await served(async (baseUrl) => {
			const script = `import { createRaykettle } from "@raykettle/sdk"; console.log((await createRaykettle({ baseUrl: "${baseUrl}" }).liveness()).status)`;
			return (await run("node", ["--input-type=module", "-e", script], { cwd: project })).stdout;
		});
		expect(printed.trim()).toBe("live");
	});

	it("weighs at most 5 kB in a browser, and asks for no other package", async () => {
		const text = await bundled(
			'export { createRaykettle, RaykettleProblem } from "@raykettle/sdk"',
			"browser",
		);
		expect(gzipSync(text).length).toBeLessThanOrEqual(5000);
		expect(text).not.toContain("import");
		const manifest = JSON.parse(readFileSync(join(root, "sdk/package.json"), "utf8")) as object;
		expect(manifest).not.toHaveProperty("dependencies");
	});

	it("keeps the words of the contract beside its types", () => {
		const dist = join(project, "node_modules/@raykettle/sdk/dist");
		expect(readFileSync(join(dist, "operations.d.ts"), "utf8")).toContain("When is the tank hot?");
		expect(readFileSync(join(dist, "schema.d.ts"), "utf8")).toContain("Above sea level");
	});
});
