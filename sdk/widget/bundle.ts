import { readFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { build, type Plugin, transform } from "esbuild";

const beside = (name: string) => fileURLToPath(new URL(name, import.meta.url));

/** Imports a style sheet as a minified string. */
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

/** The widget as one script, for the service and for the package. */
export async function widgetBundle(): Promise<string> {
	const { outputFiles } = await build({
		entryPoints: [beside("widget.ts")],
		...{ bundle: true, minify: true, write: false, format: "esm", target: "es2022", charset: "utf8" },
		alias: { "d3-scale": beside("linear-scale.ts") },
		plugins: [sheets],
	});
	return outputFiles[0]!.text;
}
