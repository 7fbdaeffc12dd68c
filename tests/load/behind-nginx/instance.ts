import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { existsSync } from "node:fs";
import { freePort } from "../spawned.ts";
import { until200 } from "./ask.ts";

const PROGRAM = "dist/server.js";
const PATIENCE = 15_000; // [ms] for a process to come up

/** One of several instances of the service: it can be ended and started again on its port. */
export interface Instance {
	readonly port: number;
	readonly start: (environment: Readonly<Record<string, string>>) => Promise<void>;
	/** Lets it sleep: it accepts connections, for the system does that, and answers nothing. */
	readonly suspend: () => void;
	/** Ends it; its exit code, or null where the signal killed it. */
	readonly end: (signal: NodeJS.Signals) => Promise<number | null>;
}

export async function instance(): Promise<Instance> {
	if (!existsSync(PROGRAM)) throw new Error(`${PROGRAM} is missing; run npm run build`);
	const port = await freePort();
	let child: ChildProcess | undefined;
	process.once("exit", () => child?.kill("SIGKILL"));
	return {
		port,
		start: async (environment) => {
			const { PATH = "" } = process.env;
			const env = { PATH, NODE_ENV: "production", PORT: String(port), LOG_LEVEL: "silent", ...environment };
			child = spawn(process.execPath, [PROGRAM], { env, stdio: ["ignore", "ignore", "inherit"] });
			await until200(port, "/health/ready", PATIENCE);
		},
		suspend: () => void child?.kill("SIGSTOP"),
		end: async (signal) => {
			if (child === undefined || child.exitCode !== null || child.signalCode !== null)
				return child?.exitCode ?? null;
			child.kill(signal);
			await once(child, "exit");
			return child.exitCode;
		},
	};
}
