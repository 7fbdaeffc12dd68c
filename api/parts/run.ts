import { derived, type Grounds, sunDay } from "../../src/index.ts";
import type { Fill } from "../wire/defaults.ts";
import { dateOf, instantOf, isoText } from "../wire/time-zone.ts";
import { toSi } from "../wire/units.ts";
import { type Site, zoneOf } from "./site.ts";

/** When a run starts and ends, and whose clocks say so. */
export interface Run {
	readonly zone: string;
	readonly start: number; // unix time [s]
	readonly end: number; // unix time [s]
}

interface Asked {
	readonly site: Site;
	readonly date: string;
	readonly startTime?: string | undefined;
	readonly endTime?: string | undefined;
}

const MINUTE = 60; // [s]

/** The run as asked, or from sunrise to sunset, each to the whole minute outside of it. */
export function runOf(asked: Asked, fill: Fill): Run {
	const zone = zoneOf(asked.site, fill);
	const noon = instantOf(asked.date, "12:00", zone);
	const sun = sunDay(noon, toSi.degrees(asked.site.latitude), toSi.degrees(asked.site.longitude));
	const shown = (time: number) =>
		dateOf(time, zone) === asked.date ? isoText(time, zone).slice(11, 16) : isoText(time, zone);
	const filled = (name: string, time: number, grounds: Grounds): number => {
		fill(`/${name}`, shown(time), grounds);
		return time;
	};
	const startOf = () => {
		if (sun.kind === "riseAndSet")
			return filled("startTime", Math.floor(sun.sunrise / MINUTE) * MINUTE, derived("sunrise"));
		return filled(
			"startTime",
			instantOf(asked.date, "00:00", zone),
			derived("the sun does not rise or set on this day"),
		);
	};
	const endOf = () => {
		if (sun.kind === "riseAndSet")
			return filled("endTime", Math.ceil(sun.sunset / MINUTE) * MINUTE, derived("sunset"));
		return filled(
			"endTime",
			instantOf(asked.date, "23:59", zone),
			derived("the sun does not rise or set on this day"),
		);
	};
	return {
		zone,
		start: asked.startTime === undefined ? startOf() : instantOf(asked.date, asked.startTime, zone),
		end: asked.endTime === undefined ? endOf() : instantOf(asked.date, asked.endTime, zone),
	};
}
