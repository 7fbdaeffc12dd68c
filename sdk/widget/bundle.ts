import { readFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { build, type Plugin, transform } from "esbuild";

const beside = (name: string) => fileURLToPath(new URL(name, import.meta.url));

/** A style sheet as a string, without its blanks. */
const sheets: Plugin = {
	name: "sheets",
	setup({ onLoad }) {
		onLoad({ filter: /\.css$/ }, async ({ path }) => {
			const { code } = await transform(await readFile(path, "utf8"), {
				loader: "css",
				minify: true,
				target: "es2022",
			});
			return { contents: code.trim(), loader: "text" };
		});
	},
};

/** d3-array makes blurs and bisectors as it loads; told that this has no effect, the bundler leaves out what nobody uses. */
const pure: Plugin = {
	name: "pure",
	setup({ onLoad }) {
		onLoad({ filter: /d3-array\W.*\.m?js$/ }, async ({ path }) => ({
			contents: (await readFile(path, "utf8"))
				.replace(/^(\w+ \w+ = )(\S+\.\w+);$/gm, "$1(() => $2)();") // to read a property may have an effect, too
				.replace(/= (\w+\(|\(\(\) =>)/g, "= /* @__PURE__ */ $1"),
			loader: "js",
		}));
	},
};

/** A scale's own words for its ticks, which nobody asks for: Intl writes the numbers. */
const wordless: Plugin = {
	name: "wordless",
	setup({ onLoad }) {
		onLoad({ filter: /d3-scale\W.*tickFormat\.js$/ }, () => ({
			contents: 'export { unused as default } from "d3-format"', // `lean.ts`
			resolveDir: beside("."),
		}));
	},
};

/** A scale with more than two points, which no chart here has, and the search that it needs. */
const straight: Plugin = {
	name: "straight",
	setup({ onLoad }) {
		onLoad({ filter: /d3-scale\W.*continuous\.js$/ }, async ({ path }) => ({
			contents: (await readFile(path, "utf8")).replace("n > 2 ? polymap : bimap", "bimap"),
			loader: "js",
		}));
	},
};

/** The widget as one script, as the service serves it and the package carries it. */
export async function widgetBundle(): Promise<string> {
	const lean = beside("lean.ts");
	const { outputFiles } = await build({
		entryPoints: [beside("widget.ts")],
		...{ bundle: true, minify: true, write: false, format: "esm", target: "es2022", charset: "utf8" },
		alias: { "d3-interpolate": lean, "d3-format": lean, "d3-path": lean },
		plugins: [sheets, pure, wordless, straight],
	});
	return outputFiles[0]!.text;
}
