/** What a deployment gets, built as the Containerfile builds it: its own lines carried out in a folder, what the image would hold
 *  started as the image says, by a user who can change none of it. Run with `npm run load:production`; needs the npm registry. */
import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { once } from "node:events";
import { chmodSync, lstatSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { operations } from "../../api/operations/index.ts";
import { ask, closeConnections, until200 } from "./behind-nginx/ask.ts";
import { questionOf } from "./behind-nginx/contract-questions.ts";
import { manifest } from "./image/manifest.ts";
import { configOf, type ImageConfig, recipe } from "./image/recipe.ts";
import { replayed } from "./image/replayed.ts";
import { freePort } from "./spawned.ts";
import { type Bound, judge } from "./table.ts";

const MOST = 80; // [MB] of a production install
const PATIENCE = 15_000; // [ms] for the service to come up
const repository = fileURLToPath(new URL("../../", import.meta.url));

const folder = mkdtempSync(join(tmpdir(), "raykettle-image-"));
process.once("exit", () => rmSync(folder, { recursive: true, force: true }));
chmodSync(folder, 0o755); // for the user of the image

console.log("The Containerfile's lines:");
const stages = recipe(readFileSync(join(repository, "api/deploy/Containerfile"), "utf8"));
const app = replayed(stages, repository, folder);
const config = configOf(stages.at(-1)!);
const { environment, probes, bounds } = manifest(
	new URL("../../api/deploy/kubernetes.yaml", import.meta.url),
);

/** Bytes on disk of a file or folder with all in it. */
function bytesOf(path: string): number {
	const stat = lstatSync(path);
	if (!stat.isDirectory()) return stat.blocks * 512;
	return readdirSync(path).reduce((sum, name) => sum + bytesOf(join(path, name)), stat.blocks * 512);
}

const megabytesOf = (path: string): number => bytesOf(path) / 1e6;

/** As the image runs a command: its environment, its user where we may become another. */
const asImage = (env: Readonly<Record<string, string>>) => ({
	cwd: app,
	env: { PATH: process.env.PATH, ...config.environment, ...env },
	...(process.getuid?.() === 0 && { uid: config.user, gid: config.user }),
});

const health = ([program, ...args]: ImageConfig["health"], env: Readonly<Record<string, string>>) =>
	spawnSync(program, args, { ...asImage(env), timeout: PATIENCE }).status;

async function shown(env: Readonly<Record<string, string>>, port: number): Promise<readonly Bound[]> {
	const [program, ...args] = config.command;
	const child: ChildProcess = spawn(program, args, {
		...asImage(env),
		stdio: ["ignore", "ignore", "inherit"],
	});
	process.once("exit", () => child.kill("SIGKILL"));
	await until200(port, "/health/ready", PATIENCE);
	const warmUp = operations.find(({ operationId }) => operationId === "warmUpTank")!;
	const { status, body } = await ask(port, questionOf(warmUp, warmUp.examples.least!.value));
	const page = await ask(port, { name: "page", method: "GET", path: "/", headers: { Accept: "text/html" } });
	const probed = await Promise.all(
		probes.map(async (path) => (await ask(port, { name: path, method: "GET", path })).status),
	);
	const healthy = health(config.health, env);
	child.kill(config.stop);
	await once(child, "exit");
	return [
		{
			name: "it starts from what the image would hold, and works out a warm-up in a thread",
			holds: status === 200 && warmUp.output.safeParse(JSON.parse(body.toString())).success,
			found: `${status}, ${body.length} bytes, as user ${process.getuid?.() === 0 ? config.user : "(ours: only root becomes another)"}`,
		},
		{
			name: "with its pages",
			holds: page.status === 200 && /^text\/html/.test(page.headers["content-type"] ?? ""),
			found: `${page.status} ${page.headers["content-type"]}`,
		},
		{
			name: "every probe of kubernetes.yaml is answered",
			holds: probed.every((one) => one === 200),
			found: probes.map((path, i) => `${path} ${probed[i]}`).join(", "),
		},
		{
			name: "HEALTHCHECK tells a service that runs from one that does not",
			holds: healthy === 0 && health(config.health, env) === 1,
			found: `${healthy} while it runs`,
		},
		{
			name: "it ends by STOPSIGNAL",
			holds: child.exitCode === 0,
			found: `${config.stop}: exit code ${child.exitCode}`,
		},
	];
}

const port = await freePort();
const env = { ...environment, HOST: "127.0.0.1", PORT: String(port), METRICS_PORT: String(await freePort()) };
const modules = megabytesOf(join(app, "node_modules"));
bounds.push(
	{
		name: `the production install takes at most ${MOST} MB`,
		holds: modules <= MOST,
		found: `${modules.toFixed(1)} MB, and ${megabytesOf(join(app, "dist")).toFixed(1)} MB of our own`,
	},
	...(await shown(env, port)),
);
closeConnections();
judge(bounds);
