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

/** The widget as one script, as the service serves it and the package carries it. */
export async function widgetBundle(): Promise<string> {
	const { outputFiles } = await build({
		entryPoints: [beside("widget.ts")],
		...{ bundle: true, minify: true, write: false, format: "esm", target: "es2022", charset: "utf8" },
		alias: { "d3-scale": beside("linear-scale.ts") },
		plugins: [sheets],
	});
	return outputFiles[0]!.text;
}
