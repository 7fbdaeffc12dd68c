import { operations } from "../../../api/routes/index.ts";
import type { Bound } from "../table.ts";
import type { Question } from "./ask.ts";
import { questionOf } from "./contract-questions.ts";
import type { Instance } from "./instance.ts";
import type { Front, Passed } from "./proxied.ts";
import { type Fate, type Stream, steady } from "./steady.ts";

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

const within = (fates: readonly Fate[], from: number, to: number) =>
	fates.filter(({ sent }) => sent >= from && sent < to);

function failed(fates: readonly Fate[]): readonly Fate[] {
	const bad = fates.filter(({ status }) => status !== 200);
	for (const { name, sent, ended, status, words } of bad.slice(0, 5))
		console.error(`${name} sent at ${sent.toFixed(0)} ms, ended ${ended.toFixed(0)}: ${status} ${words}`);
	return bad;
}

/** What nginx tells of these requests. */
function logged(fates: readonly Fate[], passed: readonly Passed[]): readonly Passed[] {
	const ids = new Set(fates.map(({ requestId }) => requestId));
	return passed.filter(({ requestId }) => ids.has(requestId));
}

function afterKill(
	fates: readonly Fate[],
	passed: readonly Passed[],
	port: number,
	killed: number,
	back: number,
): readonly Bound[] {
	const atWork = fates.filter(({ sent, ended }) => sent < killed && ended > killed);
	const caught = logged(atWork, passed).filter(({ ports }) => ports[0] === port && ports.length > 1);
	const concerned = fates.filter(({ sent, ended }) => ended > killed && sent < back);
	const bad = failed(concerned);
	const later = within(fates, killed + 1000, back);
	const bySurvivor = logged(later, passed).filter(({ ports }) => ports.at(-1) !== port);
	return [
		{
			name: "one instance killed at work: no request fails",
			holds: bad.length === 0 && caught.length > 0,
			found: `${bad.length} of ${concerned.length} failed; ${caught.length} were at work on it and answered by the other`,
		},
		{
			name: "a second later the other answers everything",
			holds: later.length > 0 && bySurvivor.length === later.length && failed(later).length === 0,
			found: `${bySurvivor.length} of ${later.length}`,
		},
	];
}

function afterReturn(
	fates: readonly Fate[],
	passed: readonly Passed[],
	port: number,
	ready: number,
	rolled: number,
): readonly Bound[] {
	const later = within(fates, ready, rolled);
	const byIt = logged(later, passed).filter(({ ports }) => ports.at(-1) === port).length;
	return [
		{
			name: "brought back, it is asked again from the first second, and nothing fails",
			holds: byIt > later.length / 10 && failed(later).length === 0,
			found: `${byIt} of ${later.length} requests`,
		},
	];
}

function afterRolling(
	fates: readonly Fate[],
	passed: readonly Passed[],
	rolled: number,
	codes: readonly (number | null)[],
): readonly Bound[] {
	const concerned = fates.filter(({ ended }) => ended > rolled);
	const bad = failed(concerned);
	const twice = logged(concerned, passed).filter(({ ports }) => ports.length > 1).length;
	return [
		{
			name: "both told to end in turn by SIGTERM, under load: both end with 0",
			holds: codes.every((code) => code === 0),
			found: codes.map((code) => `exit code ${code}`).join(", "),
		},
		{
			name: "and no request fails",
			holds: concerned.length > 0 && bad.length === 0,
			found: `${bad.length} of ${concerned.length} failed; ${twice} were passed on to the other`,
		},
	];
}
