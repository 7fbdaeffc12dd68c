import { type ChildProcess, type StdioOptions, spawn, spawnSync } from "node:child_process";
import { once } from "node:events";
import { readFileSync } from "node:fs";
import { createServer } from "node:net";
import { availableParallelism } from "node:os";

/** Servers run on the first core and their clients on the last, so that neither takes the other's time. */
export const SERVER_CORE = 0;
export const CLIENT_CORE = availableParallelism() - 1;

const canPin = process.platform === "linux" && spawnSync("taskset", ["--version"]).status === 0;

/** What a reader of the figures must know of where they were taken. */
export const placeWords = (): string =>
	canPin && CLIENT_CORE > SERVER_CORE
		? `server on core ${SERVER_CORE}, client on core ${CLIENT_CORE}`
		: "ONE CORE, or no way to choose one: server and client share it, so take these figures for what they are";

/** Starts a program on one core. */
export function pinned(
	core: number,
	command: string,
	args: readonly string[],
	env: Readonly<Record<string, string>>,
	stdio: StdioOptions,
): ChildProcess {
	const [program, ...rest] = canPin ? ["taskset", "-c", String(core), command, ...args] : [command, ...args];
	return spawn(program!, rest, { env: { ...process.env, ...env }, stdio });
}

/** Moves this process to the client's core, for a run that asks from here. */
export function pinThis(): void {
	if (canPin) spawnSync("taskset", ["-a", "-c", "-p", String(CLIENT_CORE), String(process.pid)]);
}

/** A server in a process of its own. */
export interface Spawned {
	readonly url: string;
	readonly port: number;
	readonly process: ChildProcess;
	/** Time of every core that it has used so far, all its threads together [s]. */
	readonly cpu: () => number;
	/** Memory that it holds now [MB]. */
	readonly resident: () => number;
	/** Ends it with a signal; its exit code, or null where the signal killed it. */
	readonly end: (signal?: NodeJS.Signals) => Promise<number | null>;
}

/** How a server is started.
 *  @param args   Node's own options, then the program
 *  @param probe  the path whose 200 says that it is up */
export interface Start {
	readonly args: readonly string[];
	readonly probe: string;
	readonly env?: Readonly<Record<string, string>>;
}

const children = new Set<ChildProcess>(); // none outlives this process
process.once("exit", () => {
	for (const child of children) child.kill("SIGKILL");
});

/** Keeps the client's core from falling asleep until this process ends, by a loop that gives way to everything else. A core
 *  that sleeps is woken for an answer by the server that sends it, at its cost, some ten microseconds on a virtual machine: so
 *  a server that keeps its client busy would be spared what a slower one pays, and the ratio of the two be told too low. */
export function keepClientAwake(): void {
	if (!canPin || CLIENT_CORE === SERVER_CORE) return;
	const loop = pinned(
		CLIENT_CORE,
		"chrt",
		["--idle", "0", process.execPath, "-e", "for (;;);"],
		{},
		"ignore",
	);
	loop.unref(); // this process ends all the same, and ends it
	children.add(loop);
}

const PATIENCE = 15_000; // [ms] for a server to come up

export async function spawned({ args, probe, env = {} }: Start): Promise<Spawned> {
	const port = await freePort();
	const url = `http://127.0.0.1:${port}`;
	const child = pinned(SERVER_CORE, process.execPath, args, { ...env, PORT: String(port) }, [
		"ignore",
		"ignore",
		"inherit",
		"ipc",
	]);
	children.add(child);
	child.once("exit", () => children.delete(child));
	const until = performance.now() + PATIENCE;
	while (!(await answers(url + probe))) {
		if (child.exitCode !== null || performance.now() > until)
			throw new Error(`${args.join(" ")} does not come up`);
		await new Promise((resolve) => setTimeout(resolve, 1));
	}
	return {
		url,
		port,
		process: child,
		cpu: () => cpuSeconds(child.pid!),
		resident: () => residentMegabytes(child.pid!),
		end: async (signal = "SIGTERM") => {
			if (child.exitCode === null && child.signalCode === null) {
				child.kill(signal);
				await once(child, "exit");
			}
			return child.exitCode;
		},
	};
}

/** A port that nobody listens on. */
export async function freePort(): Promise<number> {
	const server = createServer().listen(0, "127.0.0.1");
	await once(server, "listening");
	const address = server.address();
	server.close();
	await once(server, "close");
	if (typeof address !== "object" || address === null) throw new Error("no port to be had");
	return address.port;
}

async function answers(url: string): Promise<boolean> {
	try {
		const response = await fetch(url, { headers: { Connection: "close" } });
		await response.arrayBuffer();
		return response.status === 200;
	} catch {
		return false;
	}
}

const TICK = 0.01; // [s] of Linux's clock for processes

function cpuSeconds(pid: number): number {
	const fields = readFileSync(`/proc/${pid}/stat`, "utf8").split(") ").at(-1)!.split(" ");
	return (Number(fields[11]) + Number(fields[12])) * TICK;
}

function residentMegabytes(pid: number): number {
	const kilobytes = /^VmRSS:\s+(\d+) kB$/m.exec(readFileSync(`/proc/${pid}/status`, "utf8"))?.[1];
	return Number(kilobytes) / 1024;
}
