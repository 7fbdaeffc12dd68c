import { expect, it } from "vitest";
import { type Source, sourcesIn } from "./sources.ts";

const core = sourcesIn("src");
const api = sourcesIn("api");

/** The way of the heat: a stage may know those to its left. */
const CHAIN = ["sun", "sky", "dish", "receiver", "loop", "coil", "tank", "tap"];
const GROUND = ["numeric", "fluids", "heat"]; // below every stage
const FILES = ["errors.ts", "constants.ts", "methods.ts", "provenance.ts"];

const folderOf = (path: string) => path.split("/")[1] ?? "";
const isOwn = (target: string) => target.startsWith("src/");

/** Every import that a rule forbids, as "file → target". */
function offences(
	sources: readonly Source[],
	forbidden: (source: Source, target: string) => boolean,
): string[] {
	return sources.flatMap((source) =>
		source.imports
			.filter((target) => forbidden(source, target))
			.map((target) => `${source.path} → ${target}`),
	);
}

it("finds the imports it is to judge", () => {
	expect(core.length).toBeGreaterThan(50);
	expect(api.length).toBeGreaterThan(20);
	expect(core.flatMap(({ imports }) => imports)).toContain("suncalc");
	expect(api.flatMap(({ imports }) => imports)).toContain("src/index.ts");
});

it("the core imports no package but suncalc, and that in one place", () => {
	const packages = offences(core, (_source, target) => !isOwn(target));
	expect(packages).toEqual(["src/sun/position.ts → suncalc"]);
});

it("the core reads no clock, no environment and no console", () => {
	const impure = /\bDate\.now\(|\bnew Date\(\)|\bprocess\.|\bconsole\.|\bMath\.random\(|\bfetch\(/;
	expect(core.filter(({ text }) => impure.test(text)).map(({ path }) => path)).toEqual([]);
});

it("a stage imports what lies below it and the stages to its left", () => {
	const wrong = offences(core, ({ path }, target) => {
		const [from, to] = [CHAIN.indexOf(folderOf(path)), CHAIN.indexOf(folderOf(target))];
		if (from < 0 || !isOwn(target)) return false;
		const below = GROUND.includes(folderOf(target)) || FILES.includes(folderOf(target));
		return !below && !(to >= 0 && to <= from);
	});
	expect(wrong).toEqual([]);
});

it("what lies below the stages knows none of them", () => {
	const wrong = offences(core, ({ path }, target) => {
		const judged = GROUND.includes(folderOf(path)) || FILES.includes(folderOf(path));
		return judged && isOwn(target) && !GROUND.includes(folderOf(target)) && !FILES.includes(folderOf(target));
	});
	expect(wrong).toEqual([]);
});

it("only design, plant, instant, uncertainty, improvements and test-run put stages together", () => {
	const together = [
		"design",
		"plant",
		"instant",
		"uncertainty",
		"improvements",
		"test-run",
		"cautions",
		"collectors",
		"money",
		"index.ts",
	];
	const rest = core.filter(
		({ path }) => ![...CHAIN, ...GROUND, ...FILES, ...together].includes(folderOf(path)),
	);
	expect(rest.map(({ path }) => path)).toEqual([]);
});

it("only the public surface is a list of exports", () => {
	const statement = /^(?:export|import)\b/;
	const onlyHandsOn = ({ text }: Source) => {
		const lines = text.split("\n").filter((line) => statement.test(line));
		return lines.length > 0 && lines.every((line) => / from "|^(?:export|import) (?:type )?\{$/.test(line));
	};
	expect(core.filter(onlyHandsOn).map(({ path }) => path)).toEqual(["src/index.ts"]);
});

it("the edge knows the core by its public surface alone", () => {
	expect(offences(api, (_source, target) => isOwn(target) && target !== "src/index.ts")).toEqual([]);
});

/** The folders of the edge, lowest first: each imports from those before it alone. Entries and scripts stand above all. */
const EDGE = [
	"config",
	"demo",
	"problem",
	"validation",
	"wire",
	"parts",
	"operations",
	"compute",
	"observe",
	"http",
	"access",
	"pages",
];

/** Imports from a folder that stands above the importing file's own. */
const upward = (sources: readonly Source[]) =>
	offences(sources, ({ path }, target) => {
		const [from, to] = [EDGE.indexOf(folderOf(path)), EDGE.indexOf(folderOf(target))];
		return from >= 0 && target.startsWith("api/") && (to > from || to < 0);
	});

const operationOf = (path: string) => /^api\/operations\/([\w-]+)\//.exec(path)?.[1];

/** Imports from another operation's folder, which the list of operations alone may do. */
const acrossOperations = (sources: readonly Source[]) =>
	offences(sources, ({ path }, target) => {
		const owner = operationOf(target);
		return owner !== undefined && operationOf(path) !== owner && !ABOVE_OPERATIONS.test(path);
	});
const ABOVE_OPERATIONS = /^api\/operations\/index\.ts$/;

/** Every circle of files that import one another, each as the paths in it. */
function circles(sources: readonly Source[]): string[] {
	const importsOf = new Map(sources.map(({ path, imports }) => [path, imports]));
	const done = new Set<string>();
	const found: string[] = [];
	const visit = (path: string, way: readonly string[]): void => {
		if (way.includes(path)) found.push([...way.slice(way.indexOf(path)), path].join(" → "));
		if (done.has(path)) return;
		done.add(path);
		for (const target of importsOf.get(path) ?? []) visit(target, [...way, path]);
	};
	for (const { path } of sources) visit(path, []);
	return found;
}

it("folders of the edge import downwards only", () => {
	expect(upward(api)).toEqual([]);
	const planted = { path: "api/config/limits.ts", text: "", imports: ["api/http/reply.ts"] };
	expect(upward([...api, planted])).toEqual(["api/config/limits.ts → api/http/reply.ts"]);
	const entry = { path: "api/parts/dish.ts", text: "", imports: ["api/app.ts"] };
	expect(upward([...api, entry])).toEqual(["api/parts/dish.ts → api/app.ts"]);
});

it("an operation imports from no other operation's folder", () => {
	expect(acrossOperations(api)).toEqual([]);
	const path = "api/operations/sensitivity/route.ts";
	const planted = { path, text: "", imports: ["api/operations/warm-up/response.ts"] };
	expect(acrossOperations([...api, planted])).toEqual([`${path} → api/operations/warm-up/response.ts`]);
});

it("no file imports itself by way of others", () => {
	const all = [...core, ...api, ...sourcesIn("sdk"), ...sourcesIn("openapi")];
	expect(circles(all)).toEqual([]);
	const planted = [
		{ path: "src/sun/a.ts", text: "", imports: ["src/sun/b.ts"] },
		{ path: "src/sun/b.ts", text: "", imports: ["src/sun/a.ts"] },
	];
	expect(circles([...all, ...planted])).toEqual(["src/sun/a.ts → src/sun/b.ts → src/sun/a.ts"]);
});

it("only Node's entry and its server import from Node", () => {
	const node = [
		"api/server.ts",
		"api/http/node-server.ts",
		"api/http/unread-answers.ts",
		"api/observe/metrics.ts",
		"api/compute/pool/thread.ts",
		"api/pages/read.ts",
	];
	const wrong = offences(
		api,
		({ path }, target) =>
			!node.includes(path) &&
			folderOf(path) !== "scripts" &&
			(target.startsWith("node:") || target === "@hono/node-server"),
	);
	expect(wrong).toEqual([]);
});

/** Every file and package that a file imports, and what those import. */
function reachedFrom(entry: string, sources: readonly Source[]): ReadonlySet<string> {
	const reached = new Set([entry]); // grows while it is walked
	for (const path of reached)
		for (const target of sources.find((source) => source.path === path)?.imports ?? [])
			if (/^[@\w][\w@./:-]*$/.test(target)) reached.add(target); // else a word of prose before a quotation mark
	return reached;
}

it("what runs on an edge runtime reaches nothing of Node's, and these packages alone", () => {
	const sources = [...core, ...api, ...sourcesIn("sdk"), ...sourcesIn("openapi")];
	const reached = reachedFrom("api/worker.ts", sources);
	expect(reached).toContain("api/app.ts");
	expect(reached).toContain("src/sun/position.ts");
	expect([...reached].filter((target) => !/\.(?:ts|json)$/.test(target)).sort()).toEqual([
		"@hono/zod-openapi",
		"@photostructure/tz-lookup",
		"d3-scale",
		"hono",
		"hono/http-exception",
		"suncalc",
	]);
	const known = new Set(sources.map(({ path }) => path));
	expect([...reached].filter((target) => target.endsWith(".ts") && !known.has(target))).toEqual([]);
	expect(reachedFrom("api/server.ts", sources)).toContain("node:fs"); // and would find it
});

it("the core raises to a power, but for squares, by functions that every engine rounds alike", () => {
	const engineOwn = /Math\.pow\(|[\w)\]!] ?\*\* ?(?!2\b)[\w(-]/;
	const code = (text: string) => text.replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, "");
	expect(core.filter(({ text }) => engineOwn.test(code(text))).map(({ path }) => path)).toEqual([]);
	expect(engineOwn.test("wind ** 1.849")).toBe(true);
});

it("the edge takes zod from one place", () => {
	expect(offences(api, (_source, target) => target === "zod")).toEqual([]);
});

it("units are converted in one file", () => {
	const conversion =
		/[*/]\s*(?:3\.6e6|3_?600_?000)\b|273\.15|Math\.PI\s*\)?\s*\/\s*180|180\s*\)?\s*\/\s*Math\.PI/;
	const wrong = api.filter(({ path, text }) => path !== "api/wire/units.ts" && conversion.test(text));
	expect(wrong.map(({ path }) => path)).toEqual([]);
});

it("the SDK imports no package", () => {
	const sdk = sourcesIn("sdk").filter(({ path }) => !/^sdk\/(widget|chart)\//.test(path));
	expect(sdk.length).toBeGreaterThan(4);
	expect(offences(sdk, (_source, target) => !target.startsWith("sdk/"))).toEqual([]);
});

it("the public surface of the core holds nothing that the edge leaves unused", () => {
	const surface = core.find(({ path }) => path === "src/index.ts")!;
	const names = [...surface.text.matchAll(/\{([^}]*)\}/g)].flatMap(([, list]) =>
		list!
			.split(",")
			.map((name) => name.replace("type ", "").trim())
			.filter((name) => name !== ""),
	);
	expect(names.length).toBeGreaterThan(50);
	const words = new Set(api.flatMap(({ text }) => text.match(/\w+/g) ?? []));
	expect(names.filter((name) => !words.has(name))).toEqual([]);
});
