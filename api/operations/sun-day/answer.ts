import type { SunDayProfile } from "../../../src/index.ts";
import { isoText, isoTexts } from "../../wire/time-zone.ts";
import { fromSi } from "../../wire/units.ts";
import type { SunDayResponse } from "./response.ts";
import type { Period, Season } from "./seasons.ts";

const OUTCOMES = { riseAndSet: "riseAndSet", alwaysUp: "polarDay", alwaysDown: "polarNight" } as const;

/** When the sun is up. */
export function daylightOf({ day, columns }: SunDayProfile, zone: string) {
	const common = {
		daylight: OUTCOMES[day.kind],
		noon: isoText(day.noon, zone),
		noonAltitudeDeg: fromSi.degrees(columns.sunAltitude[(columns.sunAltitude.length - 1) / 2]!),
	};
	if (day.kind !== "riseAndSet") return { ...common, dayLengthMin: day.kind === "alwaysUp" ? 1440 : 0 };
	return {
		...common,
		sunrise: isoText(day.sunrise, zone),
		sunset: isoText(day.sunset, zone),
		dayLengthMin: fromSi.minutes(day.dayLength),
	};
}

/** Irradiation per square metre over the day, tracked and fixed. */
export function dailyOf({ trackedBeam, fixedPlane }: SunDayProfile): SunDayResponse["daily"] {
	const { beam, total } = fixedPlane!; // the request always has a plane
	return {
		trackedBeamKwhPerM2: fromSi.kilowattHours(trackedBeam),
		planeBeamKwhPerM2: fromSi.kilowattHours(beam),
		planeTotalKwhPerM2: fromSi.kilowattHours(total),
		...(total > 0 && { trackedOverPlane: trackedBeam / total }),
	};
}

type Tilt = SunDayProfile["bestTiltOfDay"];

function tiltOf(tilt: Tilt, from: string, to: string): SunDayResponse["bestTilt"]["day"] {
	if (!tilt) return { from, to, dailyTotalKwhPerM2: 0 };
	return {
		from,
		to,
		tiltDeg: fromSi.degrees(tilt.plane.tilt),
		surfaceAzimuthDeg: fromSi.degrees(tilt.plane.azimuth),
		dailyTotalKwhPerM2: fromSi.kilowattHours(tilt.dailyTotal),
	};
}

/** The best fixed tilt of the day and of the calendar periods around it. */
export function bestTiltsOf(
	profile: SunDayProfile,
	date: string,
	periods: readonly Period[],
): SunDayResponse["bestTilt"] {
	const tilts = periods.map(({ name, from, to }, i) => ({
		name,
		best: tiltOf(profile.bestTilts[i], from, to),
	}));
	const named = (wanted: Period["name"]) => tilts.find(({ name }) => name === wanted)!.best;
	return {
		day: tiltOf(profile.bestTiltOfDay, date, date),
		month: named("month"),
		seasons: tilts
			.filter(({ name }) => name !== "month" && name !== "year")
			.map(({ name, best }) => ({ season: name as Season, ...best })),
		year: named("year"),
	};
}

/** The day's columns in the units and times of the wire. */
export function seriesOf(
	{ columns }: SunDayProfile,
	zone: string,
	stepMin: number,
): SunDayResponse["series"] {
	const { time, sunAltitude, sunAzimuth, beam, diffuse, onPlane } = columns;
	return {
		stepMin,
		time: isoTexts(time, zone),
		sunAltitudeDeg: Array.from(sunAltitude, fromSi.degrees),
		sunAzimuthDeg: Array.from(sunAzimuth, fromSi.degrees),
		beamIrradianceWPerM2: Array.from(beam),
		diffuseIrradianceWPerM2: Array.from(diffuse),
		planeIncidenceDeg: Array.from(onPlane!.incidence, fromSi.degrees),
		planeIrradianceWPerM2: Array.from(onPlane!.total),
	};
}
