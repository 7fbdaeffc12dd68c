import type { Site } from "../sky/site.ts";
import { type SunDay, sunDay } from "../sun/day.ts";
import { type Designed, statedOr, type TimeSubject } from "./assumption.ts";
import { derived, standard, unconfirmed } from "./grounds.ts";

/** A span of time, unix times [s]. */
export interface Span {
	readonly start: number;
	readonly end: number;
}

/** A span whose ends may be omitted. */
export interface SparseSpan {
	readonly start?: number | undefined; // unix time [s]
	readonly end?: number | undefined; // unix time [s]
}

/** A day by the clocks of a place, unix times [s]. */
export interface ClockDay {
	readonly firstMinute: number;
	readonly noon: number;
	readonly lastMinute: number;
}

const MINUTE = 60; // [s]
const HALF_DAY = 43_200; // [s]
const HALF_WINDOW = 7200; // [s] 10 to 14 h by the sun: the hours in which ASAE S580.1 tests (from memory)

/** When a plant runs on a day: as stated, or from sunrise to sunset, each to the whole minute outside of it. */
export function designRun(run: SparseSpan, site: Site, day: ClockDay): Designed<Span, TimeSubject> {
	const sun = sunDay(day.noon, site.latitude, site.longitude);
	const endless = derived("the sun does not rise or set on this day");
	return sun.kind === "riseAndSet"
		? spanOf(
				statedOr(run.start, "run.start", Math.floor(sun.sunrise / MINUTE) * MINUTE, derived("sunrise")),
				statedOr(run.end, "run.end", Math.ceil(sun.sunset / MINUTE) * MINUTE, derived("sunset")),
			)
		: spanOf(
				statedOr(run.start, "run.start", day.firstMinute, endless),
				statedOr(run.end, "run.end", day.lastMinute, endless),
			);
}

/** When an instant heater must deliver water, and the daylight around it. */
export interface Window extends Span {
	readonly light: Span;
}

/** The window as stated, or two hours on either side of solar noon, to the nearest minute. */
export function designWindow(
	window: SparseSpan,
	site: Site,
	clockNoon: number,
): Designed<Window, TimeSubject> {
	const sun = sunDay(clockNoon, site.latitude, site.longitude);
	const end = (stated: number | undefined, subject: TimeSubject, time: number) =>
		statedOr(
			stated,
			subject,
			Math.round(time / MINUTE) * MINUTE,
			unconfirmed(
				standard(
					"two hours on either side of solar noon, the hours in which solar cookers are tested",
					"ASAE S580.1",
				),
			),
		);
	const { design, assumed } = spanOf(
		end(window.start, "window.start", sun.noon - HALF_WINDOW),
		end(window.end, "window.end", sun.noon + HALF_WINDOW),
	);
	return { design: { ...design, light: lightOf(sun) }, assumed };
}

function spanOf(
	start: Designed<number, TimeSubject>,
	end: Designed<number, TimeSubject>,
): Designed<Span, TimeSubject> {
	return {
		design: { start: start.design, end: end.design },
		assumed: [...start.assumed, ...end.assumed],
	};
}

function lightOf(sun: SunDay): Span {
	switch (sun.kind) {
		case "riseAndSet":
			return { start: sun.sunrise, end: sun.sunset };
		case "alwaysUp":
			return { start: sun.noon - HALF_DAY, end: sun.noon + HALF_DAY };
		case "alwaysDown":
			return { start: sun.noon - HALF_WINDOW, end: sun.noon + HALF_WINDOW };
		default:
			return sun satisfies never;
	}
}
