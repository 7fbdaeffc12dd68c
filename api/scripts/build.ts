import { fileURLToPath } from "node:url";
import { build, type Plugin } from "esbuild";

/** Excludes zod's messages in forty languages: the service has its own sentences. */
const oneLanguage: Plugin = {
	name: "one-language",
	setup: ({ onLoad }) =>
		onLoad({ filter: /zod[\\/]v4[\\/]locales[\\/]index\.js$/ }, () => ({
			contents: 'export { default as en } from "./en.js";',
		})),
};

/** Bundles the server and its pool's thread into `dist`, so that a start reads a few files instead of hundreds.
 *  zod and the core are entries only to become separate files: each thread keeps the memory that V8 needs to parse a file, about
 *  ten times its size. Packages that load their own files at run time stay external. Parts of earlier builds are kept, since a
 *  running server may still load them. */
await build({
	entryPoints: {
		server: local("../server.ts"),
		thread: local("../compute/pool/thread.ts"),
		core: local("../../src/index.ts"),
		zod: "zod",
	},
	outdir: local("../../dist"),
	bundle: true,
	splitting: true,
	chunkNames: "parts/[name]-[hash]",
	platform: "node",
	format: "esm",
	target: "node20",
	minify: true,
	sourcemap: true,
	plugins: [oneLanguage],
	external: ["piscina", "prom-client"],
	banner: { js: "import{createRequire}from'node:module';const require=createRequire(import.meta.url);" },
	logLevel: "warning",
});

/** The same app as one file for an edge runtime, which provides what Node's entry adds. */
await build({
	entryPoints: { worker: local("../worker.ts") },
	outdir: local("../../dist"),
	bundle: true,
	minify: true,
	sourcemap: true,
	plugins: [oneLanguage],
	format: "esm",
	target: "es2022",
	logLevel: "warning",
});

function local(path: string): string {
	return fileURLToPath(new URL(path, import.meta.url));
}
