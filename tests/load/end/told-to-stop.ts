import { Agent } from "node:http";
import { connect } from "node:net";
import { asked, type Outcome } from "../asked.ts";
import { boilingPoint, sensitivity, varied, warmUp } from "../bodies.ts";
import { service } from "../service.ts";
import type { Bound } from "../table.ts";

const ROUNDS = 5;
const GRACE = 10; // [s]
const LIGHT = 24; // clients with light requests: at any time some have just been sent and not been read yet
const HEAVY = 3;

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** SIGTERM under load: what was sent before is answered, new callers are not let in, and the process ends well. */
export async function toldToStop(): Promise<readonly Bound[]> {
	const rounds = [];
	for (let round = 0; round < ROUNDS; round++) rounds.push(await once());
	const before = rounds.flatMap((round) => round.before);
	const lost = before.filter(({ status }) => status !== 200 && status !== 503);
	const slowest = Math.max(...rounds.map(({ seconds }) => seconds));
	return [
		{
			name: `requests lost of those sent before SIGTERM, ${ROUNDS} times`,
			holds: before.length >= ROUNDS * LIGHT && lost.length === 0,
			found: `${lost.length} of ${before.length}${lost.length > 0 ? `; answered ${lost.map(({ status }) => status).join(", ")}` : ""}`,
		},
		{
			name: "new connections after it",
			holds: rounds.every(({ refused }) => refused),
			found: rounds.every(({ refused }) => refused) ? "refused" : "let in",
		},
		{
			name: "exit code",
			holds: rounds.every(({ code }) => code === 0),
			found: rounds.map(({ code }) => code).join(", "),
		},
		{
			name: "time to the end",
			holds: slowest <= GRACE,
			found: `${slowest.toFixed(2)} s (at most ${GRACE} s)`,
		},
	];
}

async function once() {
	const raykettle = await service({ POOL_THREADS: "1", GRACE_S: String(GRACE) }, []);
	const agent = new Agent({ keepAlive: true });
	const outcomes: Outcome[] = [];
	let asking = true;
	let nth = 0;
	const client = async (path: string, post: string | undefined) => {
		while (asking) {
			const body = post && varied(post, nth++);
			const outcome = await asked(
				raykettle.url,
				{ method: body === undefined ? "GET" : "POST", path, ...(body !== undefined && { body }) },
				agent,
			);
			outcomes.push(outcome);
			if (outcome.status !== 200) await pause(20);
		}
	};
	const all = [
		...Array.from({ length: LIGHT }, () => client(boilingPoint.path, boilingPoint.post)),
		...Array.from({ length: HEAVY }, () => client(warmUp.path, warmUp.post)),
		client(sensitivity.path, sensitivity.post),
	];
	await pause(1500);
	const told = performance.now();
	const ended = raykettle.end("SIGTERM");
	await pause(30);
	const refused = await isRefused(raykettle.port);
	asking = false;
	await Promise.all(all);
	agent.destroy(); // a caller who keeps a connection open would have it closed for him
	const code = await ended;
	return {
		before: outcomes.filter(({ sent }) => sent <= told),
		refused,
		code,
		seconds: (performance.now() - told) / 1000,
	};
}

function isRefused(port: number): Promise<boolean> {
	return new Promise((resolve) => {
		const socket = connect(port, "127.0.0.1");
		socket.on("error", () => resolve(true));
		socket.on("connect", () => {
			socket.destroy();
			resolve(false);
		});
	});
}
