import { execFile } from "node:child_process";
import {
	cpSync,
	mkdirSync,
	mkdtempSync,
	readdirSync,
	readFileSync,
	rmSync,
	symlinkSync,
	writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { served } from "../served.ts";

// The SDK as its user has it: packed, installed, type-checked both ways, run in Node, and bundled for a browser.

const run = promisify(execFile);
const root = new URL("../../", import.meta.url).pathname;
const bin = (name: string) => join(root, "node_modules/.bin", name);

const PROGRAM = `import { createRaykettle, RaykettleProblem } from "@raykettle/sdk";
import { sentence } from "@raykettle/sdk/texts";
import type { Catalogue, RaykettleSizer } from "@raykettle/sdk/widget";

export function filled(sizer: RaykettleSizer): void {
	sizer.catalogue = {
		dishes: [{ id: "d", name: "Dish", dish: { kind: "twoAxis", diameterM: 2 } }],
		tanks: [{ id: "t", name: { en: "Tank", es: "Depósito" }, tank: { volumeL: 200 } }],
	} satisfies Catalogue;
}

export async function asked(baseUrl: string): Promise<string> {
	const raykettle = createRaykettle({ baseUrl, timeoutMs: 5000, fetch });
	const { boilingPointC } = await raykettle.boilingPoint({ elevationM: 3000 });
	// @ts-expect-error a name that the contract does not hold
	const error = await raykettle.boilingPoint({ height: 3000 }).catch((caught: unknown) => caught);
	const fault = error instanceof RaykettleProblem ? error.errors[0] : undefined;
	const words = fault && sentence("es", "faults", fault.code, { field: fault.pointer ?? fault.parameter });
	return [boilingPointC.toFixed(1), words].join(" ");
}
`;

/** An empty project into which the packed SDK was installed, as its user has it. */
let project: string;
let tarball: string;

beforeAll(async () => {
	project = mkdtempSync(join(tmpdir(), "sdk-user-"));
	const copy = join(project, "sdk"); // packed from a copy, so that no test run meets another's build
	mkdirSync(copy);
	for (const name of readdirSync(join(root, "sdk")))
		if (name !== "dist" && name !== "node_modules")
			cpSync(join(root, "sdk", name), join(copy, name), { recursive: true });
	symlinkSync(join(root, "node_modules"), join(copy, "node_modules"));
	cpSync(join(root, "tsconfig.json"), join(project, "tsconfig.base.json"));
	const config = readFileSync(join(copy, "tsconfig.json"), "utf8").replace(
		"../tsconfig.json",
		"../tsconfig.base.json",
	);
	writeFileSync(join(copy, "tsconfig.json"), config);
	const env = { ...process.env, PATH: `${join(root, "node_modules/.bin")}:${process.env.PATH}` };
	const { stdout } = await run("npm", ["pack", "--json", "--pack-destination", project], { cwd: copy, env });
	const [{ filename }] = JSON.parse(stdout) as [{ filename: string }];
	tarball = filename;
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
		expect(printed.trim()).toBe("90.0 height no es un campo conocido.");
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

	it("carries the widget with its types, and nothing that nobody imports", () => {
		const packed = join(project, "node_modules/@raykettle/sdk");
		const files = readdirSync(packed, { recursive: true, encoding: "utf8" });
		const scripts = files.filter((name) => name.endsWith(".js")).map((name) => name.replace("dist/", ""));
		expect(scripts.toSorted()).toEqual([
			"call.js",
			"client.js",
			"index.js",
			"limited.js",
			"method.js",
			"operations.js",
			"problem.js",
			"retry.js",
			"texts/ar.js",
			"texts/en.js",
			"texts/es.js",
			"texts/languages.js",
			"texts/sentence.js",
			"texts/speech.js",
			"us-units.js",
			"widget.js",
		]);
		expect(gzipSync(readFileSync(join(packed, "dist/widget.js")), { level: 9 }).length).toBeLessThanOrEqual(
			26_000,
		);
		expect(readFileSync(join(packed, "dist/widget.js"), "utf8")).not.toMatch(/^import|\bimport\(/m);
	});

	it.each(["README.md", "sdk/README.md"])(
		"is packed under the name that %s prints, by a command that npm takes",
		async (name) => {
			const text = readFileSync(join(root, name), "utf8");
			const [pack, install] = [...text.matchAll(/^npm (pack|install) .*$/gm)].map(
				([line]) => line.split(/ +#/)[0]!,
			);
			expect(install).toBe(`npm install <path>/${tarball}`);
			const { stdout } = await run("sh", ["-c", `${pack} --dry-run --ignore-scripts --json`], { cwd: root });
			expect(JSON.parse(stdout)).toMatchObject([{ filename: tarball }]);
		},
	);

	it("keeps the words of the contract beside its types", () => {
		const dist = join(project, "node_modules/@raykettle/sdk/dist");
		expect(readFileSync(join(dist, "operations.d.ts"), "utf8")).toContain(
			"Warm-up of a tank through one day",
		);
		expect(readFileSync(join(dist, "schema.d.ts"), "utf8")).toContain("Elevation above sea level");
	});
});
