import { DomainError, requireWithin } from "../errors.ts";
import { linearInterpolation } from "../numeric/interpolate.ts";
import { extraterrestrialNormal } from "../sun/orbit.ts";
import { apparentAltitudeAt, sunPosition } from "../sun/position.ts";
import { standardPressure } from "./atmosphere.ts";
import type { Site } from "./site.ts";
import { type BeamAndDiffuse, beamFromDiffuse, splitGlobal } from "./split.ts";
import type { Weather } from "./weather.ts";

type Column = ArrayLike<number>;

/** Readings of a weather station in columns: any two of beam, diffuse and global, or global alone. */
export interface MeasuredSky {
	readonly time: Column; // unix times, strictly increasing [N] [s]
	readonly beam: Column | undefined; // on a plane normal to it [N] [W/m²]
	readonly diffuse: Column | undefined; // on the horizontal [N] [W/m²]
	readonly global: Column | undefined; // on the horizontal [N] [W/m²]
	readonly ambient: Column; // air temperature [N] [K]
	readonly wind: Column; // [N] [m/s]
}

type Readings = (time: number, sunAltitude: number) => BeamAndDiffuse;

const MOST_IRRADIANCE = 2000; // [W/m²] greatest plausible reading at the ground, even between bright clouds; common practice, no source

/** Weather at given instants from the readings of a station, by linear interpolation between rows and never beyond them.
 *  Beam and diffuse are used when both are present (global is then ignored); else the missing one follows from
 *  the other and global; global alone is split by Erbs, Klein & Duffie. With the sun below the horizon the beam is zero.
 *  @param times  unix times [M] [s]; outside the rows DomainError out_of_range
 *  Errors  contradictory: no usable set of irradiances, unequal columns, times that do not increase */
export function measuredWeather(site: Site, sky: MeasuredSky, times: Float64Array): Weather {
	requireConsistent(sky);
	const readings = irradianceReadings(sky);
	const pressure = standardPressure(site.elevation);
	const first = sky.time[0]!;
	const last = sky.time[sky.time.length - 1]!;
	const weather = {
		time: times.slice(),
		sunAltitude: new Float64Array(times.length),
		sunAzimuth: new Float64Array(times.length),
		beam: new Float64Array(times.length),
		diffuse: new Float64Array(times.length),
		ambient: times.map((time) => linearInterpolation(sky.time, sky.ambient, time)),
		wind: times.map((time) => linearInterpolation(sky.time, sky.wind, time)),
	};
	for (let i = 0; i < times.length; i++) {
		const time = times[i]!;
		requireWithin("time", time, first, last);
		const sun = sunPosition(time, site.latitude, site.longitude);
		const altitude = apparentAltitudeAt(sun.trueAltitude, pressure);
		const { beam, diffuse } = readings(time, altitude);
		weather.sunAltitude[i] = altitude;
		weather.sunAzimuth[i] = sun.azimuth;
		weather.beam[i] = altitude > 0 ? beam : 0;
		weather.diffuse[i] = diffuse;
	}
	return weather;
}

/** Beam and diffuse from the columns that are present, in one of four ways. */
function irradianceReadings({ time: rows, beam, diffuse, global }: MeasuredSky): Readings {
	const at = (column: Column, time: number) => linearInterpolation(rows, column, time);
	if (beam && diffuse) return (time) => ({ beam: at(beam, time), diffuse: at(diffuse, time) });
	if (beam && global)
		return (time, sunAltitude) => {
			const onHorizontal = at(beam, time) * Math.max(0, Math.sin(sunAltitude));
			return { beam: at(beam, time), diffuse: Math.max(0, at(global, time) - onHorizontal) }; // two instruments never agree exactly
		};
	if (diffuse && global)
		return (time, sunAltitude) => {
			const outside = extraterrestrialNormal(time);
			const scattered = at(diffuse, time);
			return { beam: beamFromDiffuse(at(global, time), scattered, outside, sunAltitude), diffuse: scattered };
		};
	if (global)
		return (time, sunAltitude) => splitGlobal(at(global, time), extraterrestrialNormal(time), sunAltitude);
	throw new DomainError(
		"contradictory",
		"sky.irradiance",
		"global irradiance, or beam and diffuse, are required",
		{
			missing: beam ? "diffuse or global" : "global",
		},
	);
}

function requireConsistent(sky: MeasuredSky): void {
	const rows = sky.time.length;
	if (!(rows >= 2))
		throw new DomainError("contradictory", "sky.rows", "measured weather needs at least two rows", { rows });
	for (let i = 1; i < rows; i++)
		if (!(sky.time[i]! > sky.time[i - 1]!))
			throw new DomainError("contradictory", "sky.rows", "times must increase from row to row", { row: i });
	requireColumn("beam", sky.beam, rows, 0, MOST_IRRADIANCE);
	requireColumn("diffuse", sky.diffuse, rows, 0, MOST_IRRADIANCE);
	requireColumn("global", sky.global, rows, 0, MOST_IRRADIANCE);
	requireColumn("ambient", sky.ambient, rows, 150, 350);
	requireColumn("wind", sky.wind, rows, 0, 100);
}

function requireColumn(
	name: "beam" | "diffuse" | "global" | "ambient" | "wind",
	column: Column | undefined,
	rows: number,
	low: number,
	high: number,
): void {
	if (column === undefined) return;
	if (column.length !== rows)
		throw new DomainError("contradictory", `sky.${name}`, `${name} must have as many rows as time`, {
			name,
			rows: column.length,
			expected: rows,
		});
	for (let i = 0; i < rows; i++) requireWithin(`sky.${name}`, column[i]!, low, high);
}
