import { type Environment, reader } from "./environment.ts";
import { type Settings, settingsFrom } from "./settings.ts";

export const LOG_LEVELS = ["silent", "fatal", "error", "warn", "info", "debug"] as const;

/** What a Node process is told about itself: where it listens, what it may use, whom it lets in. */
export interface Deployment {
	readonly host: string;
	readonly port: number;
	readonly metricsPort: number | undefined; // no metrics unless set
	readonly threads: number | undefined; // of the pool; as many as there are cores unless set, none computes in place
	readonly logLevel: (typeof LOG_LEVELS)[number];
	readonly keysFile: string | undefined; // anyone may ask unless set
	readonly keysRequired: boolean; // whether a request without a key is refused
	readonly settings: Settings;
}

const PORT = { least: 0, most: 65_535 };

/** A deployment as the environment describes it. Throws one sentence that names every fault. */
export function deploymentFrom(environment: Environment): Deployment {
	const read = reader(environment);
	const deployment: Deployment = {
		host: read.text("HOST", /^[\w.:%-]+$/, "a host name or an IP address") ?? "127.0.0.1",
		port: read.wholeNumber({ variable: "PORT", ...PORT }) ?? 8787,
		metricsPort: read.wholeNumber({ variable: "METRICS_PORT", ...PORT }),
		threads: read.wholeNumber({ variable: "POOL_THREADS", least: 0, most: 64 }),
		logLevel: (read.text(
			"LOG_LEVEL",
			new RegExp(`^(?:${LOG_LEVELS.join("|")})$`),
			`one of ${LOG_LEVELS.join(", ")}`,
		) ?? "info") as Deployment["logLevel"],
		keysFile: read.text("KEYS_FILE", /./, "the path of a file"),
		keysRequired: read.keysRequired("KEYS_FILE"),
		settings: settingsFrom(read),
	};
	read.end();
	return deployment;
}
