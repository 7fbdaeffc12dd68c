import { type Assumption, designRun, type Span, type TimeSubject } from "../../src/index.ts";
import { contradictory, type Rule } from "../validation/rule.ts";
import type { Assumed, Completed } from "../wire/defaults.ts";
import { dateOf, instantOf, isoText } from "../wire/time-zone.ts";
import { optionally } from "../wire/units.ts";
import { coreSite, type Site, timeZoneOf } from "./site.ts";
import { rowTimes, type Sky } from "./sky.ts";

/** When a run starts and ends, and whose clocks show it. */
export interface Run extends Span {
	readonly timeZone: string;
}

interface RunRequest {
	readonly site: Site;
	readonly date: string;
	readonly startTime?: string | undefined;
	readonly endTime?: string | undefined;
}

/** The run as sent, or from sunrise to sunset. */
export function runOf({ site, date, startTime, endTime }: RunRequest): Completed<Run> {
	const zone = timeZoneOf(site);
	const at = (clock: string) => instantOf(date, clock, zone.value);
	const { design, assumed } = designRun(
		{ start: optionally(at, startTime), end: optionally(at, endTime) },
		coreSite(site),
		{ firstMinute: at("00:00"), noon: at("12:00"), lastMinute: at("23:59") },
	);
	return {
		value: { timeZone: zone.value, ...design },
		assumed: [...zone.assumed, ...wireTimes(assumed, date, zone.value)],
	};
}

const POINTERS: Readonly<Record<TimeSubject, string>> = {
	"run.start": "/startTime",
	"run.end": "/endTime",
	"window.start": "/startTime",
	"window.end": "/endTime",
};

/** Times that the core assumed, as clock times of their date; a time on another date in full. */
export function wireTimes(
	assumed: readonly Assumption<TimeSubject>[],
	date: string,
	timeZone: string,
): readonly Assumed[] {
	return assumed.map(({ subject, value: time, grounds }) => {
		const text = isoText(time, timeZone);
		const value = dateOf(time, timeZone) === date ? text.slice(11, 16) : text;
		return { pointer: POINTERS[subject], value, ...grounds };
	});
}

/** The run designed from a request. */
interface Designs {
	readonly run: Run;
}

/** A run ends after it starts. */
export const endAfterStart: Rule<RunRequest, Designs> = ({ endTime }, { run: { start, end, timeZone } }) => {
	if (end > start) return [];
	const [starts, ends] = [isoText(start, timeZone), isoText(end, timeZone)];
	return endTime === undefined
		? [contradictory("/startTime", `must be before the end of the run at ${ends}; ${starts} is not`)]
		: [contradictory("/endTime", `must be after the start of the run at ${starts}; ${ends} is not`)];
};

/** Measured rows reach from the start of the run to its end. */
export const rowsCoverRun: Rule<{ readonly sky: Sky }, Designs> = ({ sky }, { run }) => {
	if (sky.kind !== "measured") return [];
	const { start, end, timeZone } = run;
	const times = rowTimes(sky);
	const [first, last] = [times[0]!, times.at(-1)!];
	return end > start && (first > start || last < end)
		? [
				contradictory(
					"/sky/time",
					`must cover the run from ${isoText(start, timeZone)} to ${isoText(end, timeZone)}, but reaches from ${isoText(first, timeZone)} to ${isoText(last, timeZone)}; send rows for the whole run, or startTime and endTime within the rows`,
				),
			]
		: [];
};
