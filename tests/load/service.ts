import { existsSync } from "node:fs";
import { freePort, type Spawned, spawned } from "./spawned.ts";

const PROGRAM = "dist/server.js";

/** The service in a process of its own, with all that a deployment may turn on: metrics, logs, a rate limit that nobody
 *  reaches (so its fields are sent), the pool.
 *  @param environment  what this run sets differently
 *  @param options      of Node itself */
export async function service(
	environment: Readonly<Record<string, string>>,
	options: readonly string[],
): Promise<Service> {
	if (!existsSync(PROGRAM)) throw new Error(`${PROGRAM} is missing; run npm run build`);
	const metricsPort = await freePort();
	const env = {
		NODE_ENV: "production",
		LOG_LEVEL: "info",
		METRICS_PORT: String(metricsPort),
		RATE_REQUESTS: "10000000",
		...environment,
	};
	const started = await spawned({ args: [...options, PROGRAM], probe: "/health/live", env });
	return { ...started, metrics: `http://127.0.0.1:${metricsPort}/metrics` };
}

export interface Service extends Spawned {
	readonly metrics: string; // where its figures are told
}
