import { fileURLToPath } from "node:url";
import { build, type Plugin } from "esbuild";

/** Leaves out zod's messages in forty languages: ours are our own sentences. */
const oneLanguage: Plugin = {
	name: "one-language",
	setup: ({ onLoad }) =>
		onLoad({ filter: /zod[\\/]v4[\\/]locales[\\/]index\.js$/ }, () => ({
			contents: 'export { default as en } from "./en.js";',
		})),
};

/** Bundles the server and what its pool's threads run into `dist`, so that a start reads a few files instead of hundreds.
 *  Packages and core are entries only so that they become files of their own: what V8 takes up while it parses a file, about
 *  ten times its size, each thread keeps. What finds files of its own at run time stays a package. Parts of a build before
 *  are left: a server that runs from it may ask for one yet. */
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

/** The same app as one file for an edge runtime, which brings what Node's entry adds in its own way. */
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
