import { z } from "@hono/zod-openapi";
import { type Environment, KEYS_REQUIRED, oneOf, textLike, variablesIn, wholeNumber } from "./environment.ts";
import { SETTING_VARIABLES, type Settings, settingsFrom } from "./settings.ts";

export const LOG_LEVELS = ["silent", "fatal", "error", "warn", "info", "debug"] as const;

/** The deployment of a Node process: its address, its resources and its access control. */
export interface Deployment {
	readonly host: string;
	readonly port: number;
	readonly metricsPort: number | undefined; // no metrics unless set
	readonly threads: number | undefined; // of the pool; as many as there are cores unless set, none computes in place
	readonly logLevel: (typeof LOG_LEVELS)[number];
	readonly keysFile: string | undefined; // any client is accepted unless set
	readonly keysRequired: boolean; // whether a request without a key is refused
	readonly settings: Settings;
}

const port = wholeNumber(0, 65_535);

const Variables = z.object({
	HOST: textLike(/^[\w.:%-]+$/, "a host name or an IP address"),
	PORT: port,
	METRICS_PORT: port,
	POOL_THREADS: wholeNumber(0, 64),
	LOG_LEVEL: oneOf(LOG_LEVELS),
	KEYS_FILE: textLike(/./, "the path of a file"),
	KEYS_REQUIRED,
	...SETTING_VARIABLES,
});

/** A deployment as the environment describes it. Throws one sentence that names every fault. */
export function deploymentFrom(environment: Environment): Deployment {
	const variables = variablesIn(Variables, environment, "KEYS_FILE");
	return {
		host: variables.HOST ?? "127.0.0.1",
		port: variables.PORT ?? 8787,
		metricsPort: variables.METRICS_PORT,
		threads: variables.POOL_THREADS,
		logLevel: variables.LOG_LEVEL ?? "info",
		keysFile: variables.KEYS_FILE,
		keysRequired: variables.KEYS_REQUIRED === "true",
		settings: settingsFrom(variables),
	};
}
