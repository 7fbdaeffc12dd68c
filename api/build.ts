import { fileURLToPath } from "node:url";
import { build } from "esbuild";

/** Bundles the server and what its pool's threads run into `dist`, so that a start reads two files instead of hundreds.
 *  What finds files of its own at run time stays a package. */
await build({
	entryPoints: { server: local("./server.ts"), thread: local("./pool/thread.ts") },
	outdir: local("../dist"),
	bundle: true,
	platform: "node",
	format: "esm",
	target: "node20",
	sourcemap: true,
	external: ["piscina", "pino", "prom-client"],
	banner: { js: "import{createRequire}from'node:module';const require=createRequire(import.meta.url);" },
	logLevel: "warning",
});

/** The same app as one file for an edge runtime, which brings what Node's entry adds in its own way. */
await build({
	entryPoints: { worker: local("./worker.ts") },
	outdir: local("../dist"),
	bundle: true,
	minify: true,
	format: "esm",
	target: "es2022",
	logLevel: "warning",
});

function local(path: string): string {
	return fileURLToPath(new URL(path, import.meta.url));
}
