import { operations } from "../../../api/operations/index.ts";
import type { Bound } from "../table.ts";
import type { Question } from "./ask.ts";
import { questionOf } from "./contract-questions.ts";
import type { Instance } from "./instance.ts";
import type { Front } from "./proxied.ts";
import { type Stream, steady } from "./steady.ts";
import { afterKill, afterReturn, afterRolling } from "./verdicts.ts";

type Environment = Readonly<Record<string, string>>;

const warmUp = operations.find(({ operationId }) => operationId === "warmUpTank")!;
const [, example] = Object.entries(warmUp.examples)[0]!;

/** A day marched by a step, of a tank that no other request has: so no memory answers it. */
const warmUpOf = (volumeL: number, stepS: number): Question =>
	questionOf(warmUp, { ...example.value, tank: { volumeL }, stepS });

const STREAMS: readonly Stream[] = [
	{
		perSecond: 50,
		next: (nth) => ({
			name: "light",
			method: "GET",
			path: `/v1/boiling-point?elevationM=${nth % 4000}`,
		}),
	},
	{ perSecond: 4, next: (nth) => warmUpOf(100 + nth / 8, 120) },
];

const LONG_STEP = 30; // [s] of a march that takes a tenth of a second or so, so that it is caught at work
const CAUGHT = 3; // of them at once: fewer than an instance has threads, so one left alone need not shed any
const HEADSTART = 30; // [ms] in which they reach the instances
let longOnes = 0;
const longOne = () => warmUpOf(300 + longOnes++ / 8, LONG_STEP);

const pause = (seconds: number) => new Promise((resolve) => setTimeout(resolve, seconds * 1000));

/** Steady traffic through nginx while one instance is killed and brought back, then both are restarted in turn. */
export async function losses(
	proxy: Front,
	[one, other]: readonly [Instance, Instance],
	environment: Environment,
): Promise<readonly Bound[]> {
	const traffic = steady(proxy.port, STREAMS);
	await pause(2);

	for (let i = 0; i < CAUGHT; i++) void traffic.also(longOne());
	await pause(HEADSTART / 1000);
	const killed = traffic.now();
	await one.end("SIGKILL");
	await pause(2.5);
	const back = traffic.now();
	await one.start(environment);
	const ready = traffic.now();
	await pause(1);

	const rolled = traffic.now();
	const codes: (number | null)[] = [];
	for (const each of [one, other]) {
		for (let i = 0; i < CAUGHT; i++) void traffic.also(longOne());
		await pause(HEADSTART / 1000);
		codes.push(await each.end("SIGTERM"));
		await each.start(environment);
	}
	await pause(1);
	const fates = await traffic.stop();
	const passed = await proxy.passed();
	return [
		...afterKill(fates, passed, one.port, killed, back),
		...afterReturn(fates, passed, one.port, ready, rolled),
		...afterRolling(fates, passed, rolled, codes),
	];
}
