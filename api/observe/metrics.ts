import { createServer, type Server } from "node:http";
import type { Pool } from "../compute/pool/pool.ts";
import type { RequestRecord } from "./request-record.ts";

const BUCKETS = [0.001, 0.0025, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10]; // [s]

export interface Metrics {
	readonly requests: (batch: readonly RequestRecord[]) => void;
	/** The server of GET /metrics, for a private port. */
	readonly server: Server;
}

/** Metrics for Prometheus: count and duration of requests by operation and status (429 refused, 503 shed, 499 client disconnected),
 *  depth of the pool, and process metrics. Label values come from fixed lists, never from requests.
 *  @param complete  delivers pending records before metrics are read */
export async function metricsOf(pool: Pool | undefined, complete: () => void): Promise<Metrics> {
	const { collectDefaultMetrics, Gauge, Histogram, Registry } = await import("prom-client");
	const registry = new Registry();
	collectDefaultMetrics({ register: registry });
	const durations = new Histogram({
		name: "raykettle_request_duration_seconds",
		help: "Time from a request's first line to its response, by operation and status.",
		labelNames: ["operation", "status"] as const,
		buckets: BUCKETS,
		registers: [registry],
	});
	if (pool)
		new Gauge({
			name: "raykettle_pool_answers",
			help: "Answers being computed by the pool, and answers waiting for a thread.",
			labelNames: ["state"] as const,
			registers: [registry],
			collect() {
				const { running, waiting } = pool.depth();
				this.set({ state: "running" }, running);
				this.set({ state: "waiting" }, waiting);
			},
		});
	const server = createServer(async (request, response) => {
		complete();
		const found = request.method === "GET" && request.url === "/metrics";
		response.writeHead(found ? 200 : 404, found ? { "Content-Type": registry.contentType } : {});
		response.end(found ? await registry.metrics() : undefined);
	});
	return {
		requests: (batch) => {
			for (const { operation, status, seconds } of batch) durations.observe({ operation, status }, seconds);
		},
		server,
	};
}
