import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { once } from "node:events";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { freePort } from "../spawned.ts";
import { ask } from "./ask.ts";

const FILE = fileURLToPath(new URL("../../../api/deploy/nginx.conf", import.meta.url));
const FLUSH = 1500; // [ms] after which a line that nginx logged can be read

/** What nginx tells of one request. */
export interface Passed {
	readonly requestId: string;
	readonly status: number;
	readonly ports: readonly number[]; // of the instances asked, the one that answered last
}

export interface Front {
	readonly port: number;
	readonly passed: () => Promise<readonly Passed[]>;
	/** All that nginx has written so far. */
	readonly written: () => string;
	readonly end: () => Promise<void>;
}

/** Ends the run with a sentence where there is no nginx. */
export function needNginx(): void {
	if (spawnSync("nginx", ["-v"]).status === 0) return;
	console.error("nginx is missing: apt-get install nginx-light (or nginx), then run this again");
	process.exit(1);
}

/** nginx before two instances, with the very file that a deployment takes: only ports and places are filled in. */
export async function proxied(instances: readonly [number, number]): Promise<Front> {
	const folder = mkdtempSync(join(tmpdir(), "raykettle-nginx-"));
	mkdirSync(join(folder, "temp"));
	const remove = () => rmSync(folder, { recursive: true, force: true });
	process.once("exit", remove);
	const port = await freePort();
	const [log, errors, conf] = ["access.log", "error.log", "nginx.conf"].map((name) => join(folder, name));
	writeFileSync(conf!, filledIn(readFileSync(FILE, "utf8"), port, instances, folder));
	const child = spawn(
		"nginx",
		["-e", errors!, "-c", conf!, "-g", `daemon off; pid ${join(folder, "pid")};`],
		{ stdio: ["ignore", "ignore", "inherit"] },
	);
	process.once("exit", () => child.kill("SIGTERM"));
	await up(child, port);
	return {
		port,
		passed: async () => {
			await new Promise((resolve) => setTimeout(resolve, FLUSH));
			return readFileSync(log!, "utf8").trim().split("\n").map(passedIn);
		},
		written: () => readFileSync(log!, "utf8") + readFileSync(errors!, "utf8"),
		end: async () => {
			child.kill("SIGTERM");
			if (child.exitCode === null) await once(child, "exit");
			remove();
		},
	};
}

function filledIn(
	file: string,
	port: number,
	[first, second]: readonly [number, number],
	folder: string,
): string {
	const temp = ["client_body", "proxy", "fastcgi", "uwsgi", "scgi"]
		.map((kind) => `${kind}_temp_path ${join(folder, "temp", kind)};`)
		.join(" ");
	const places: readonly (readonly [string, string])[] = [
		["listen 8080;", `listen 127.0.0.1:${port};`],
		["server 127.0.0.1:8787 ", `server 127.0.0.1:${first} `],
		["server 127.0.0.1:8788 ", `server 127.0.0.1:${second} `],
		["access_log /var/log/nginx/raykettle.log ", `access_log ${join(folder, "access.log")} `],
		["error_log /var/log/nginx/error.log ", `error_log ${join(folder, "error.log")} `],
		["http {\n", `http {\n\t${temp}\n`],
	];
	return places.reduce((text, [from, to]) => {
		if (text.split(from).length !== 2) throw new Error(`nginx.conf does not say "${from}" once`);
		return text.replace(from, to);
	}, file);
}

async function up(child: ChildProcess, port: number): Promise<void> {
	const question = { name: "up", method: "GET" as const, path: "/health/live" };
	for (let tries = 0; tries < 250; tries++) {
		if (child.exitCode !== null) throw new Error(`nginx ends with ${child.exitCode}`);
		const there = await ask(port, question).then(
			() => true,
			() => false,
		);
		if (there) return;
		await new Promise((resolve) => setTimeout(resolve, 20));
	}
	throw new Error("nginx does not come up");
}

function passedIn(line: string): Passed {
	const { requestId, status, instances } = JSON.parse(line) as Record<string, string>;
	const ports = [...instances!.matchAll(/:(\d+)/g)].map(([, digits]) => Number(digits));
	return { requestId: requestId!, status: Number(status), ports };
}
