import { createInterface } from "node:readline";
import type { Readable } from "node:stream";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { Miniflare } from "miniflare";

/** The service in an edge runtime, reached through a socket as callers reach it. */
export interface OnWorkerd {
	readonly ask: (path: string, init?: RequestInit) => Promise<Response>;
	readonly url: URL; // where it listens, for what only a bare socket can send
	readonly written: readonly string[]; // every line that it wrote for its operator
	readonly end: () => Promise<void>;
}

let bundle: Promise<string> | undefined;

/** `api/worker.ts` as it now reads, so that no old file is tested, in one file. */
async function bundled(): Promise<string> {
	const { outputFiles } = await build({
		entryPoints: [fileURLToPath(new URL("../../api/worker.ts", import.meta.url))],
		bundle: true,
		minify: true,
		write: false,
		format: "esm",
		target: "es2022",
	});
	return outputFiles[0]!.text;
}

/** Starts workerd with the service on a free port.
 *  @param bindings  what stands for the environment there */
export async function onWorkerd(bindings: Readonly<Record<string, string>>): Promise<OnWorkerd> {
	bundle ??= bundled();
	const script = await bundle;
	const written: string[] = [];
	const runtime = new Miniflare({
		modules: true,
		script,
		compatibilityDate: "2026-04-01",
		bindings: { ...bindings },
		unsafeDirectSockets: [{ host: "127.0.0.1", port: 0 }], // else answers come packed by a proxy of the test tool's own
		cf: false, // asks nobody where it stands
		telemetry: { enabled: false },
		handleRuntimeStdio: (output: Readable, error: Readable) => {
			for (const input of [output, error])
				createInterface({ input }).on("line", (line) => written.push(line));
		},
	});
	await runtime.ready;
	const url = await runtime.unsafeGetDirectURL();
	return {
		url,
		written,
		ask: (path, init) => fetch(new URL(path, url), init),
		end: () => runtime.dispose(),
	};
}
