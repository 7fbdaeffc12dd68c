import type { Bound } from "../table.ts";
import type { Passed } from "./proxied.ts";
import type { Fate } from "./steady.ts";

const within = (fates: readonly Fate[], from: number, to: number) =>
	fates.filter(({ sent }) => sent >= from && sent < to);

/** Refused at once by a busy instance that works well, as on a machine that others use too: nothing is lost. */
const isShed = ({ name, status, words }: Fate) =>
	name !== "light" && status === 503 && words.includes("The service is at capacity");

const shedIn = (fates: readonly Fate[]) => `${fates.filter(isShed).length} shed`;

function failed(fates: readonly Fate[]): readonly Fate[] {
	const bad = fates.filter((fate) => fate.status !== 200 && !isShed(fate));
	for (const { name, sent, ended, status, words } of bad.slice(0, 5))
		console.error(`${name} sent at ${sent.toFixed(0)} ms, ended ${ended.toFixed(0)}: ${status} ${words}`);
	return bad;
}

/** What nginx tells of these requests. */
function logged(fates: readonly Fate[], passed: readonly Passed[]): readonly Passed[] {
	const ids = new Set(fates.map(({ requestId }) => requestId));
	return passed.filter(({ requestId }) => ids.has(requestId));
}

/** Whether the death of an instance at work lost anything, and how soon the other does all the work. */
export function afterKill(
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
			found: `${bad.length} of ${concerned.length} failed, ${shedIn(concerned)}; ${caught.length} were at work on it and answered by the other`,
		},
		{
			name: "a second later the other answers everything",
			holds: later.length > 0 && bySurvivor.length === later.length && failed(later).length === 0,
			found: `${bySurvivor.length} of ${later.length}`,
		},
	];
}

/** Whether an instance that is back is asked again. */
export function afterReturn(
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

/** Whether a restart of both in turn loses anything. */
export function afterRolling(
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
			found: `${bad.length} of ${concerned.length} failed, ${shedIn(concerned)}; ${twice} were passed on to the other`,
		},
	];
}
