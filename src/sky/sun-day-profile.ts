import { requireWithin } from "../errors.ts";
import { type SunDay, sunDay } from "../sun/day.ts";
import { cosIncidence, type Plane, planeIrradiance } from "../sun/plane.ts";
import { standardPressure } from "./atmosphere.ts";
import { type BestTilt, bestTilt } from "./best-tilt.ts";
import { clearInstant } from "./clear-instant.ts";
import {
	type ClearSamples,
	clearSamples,
	meanOnPlane,
	meanTrackedBeam,
	type Period,
} from "./clear-samples.ts";
import type { Site } from "./site.ts";

/** Request for a profile of one day of sun. */
export interface SunDayTask {
	readonly time: number; // any instant of the day; the solar day of the nearest noon is used; unix time [s]
	readonly turbidity: number; // Linke, at air mass 2 [-]
	readonly plane: Plane | undefined; // a fixed plane to compare with
	readonly step: number; // of the columns [s]
	readonly periods: readonly Period[]; // additional periods for a best tilt: the month, the seasons, the year
}

/** The day in columns, from solar midnight to solar midnight, with noon in the middle row. */
export interface SunDayColumns {
	readonly time: Float64Array; // unix times [N] [s]
	readonly sunAltitude: Float64Array; // apparent, at the site's pressure [N] [rad]
	readonly sunAzimuth: Float64Array; // [N] [rad]
	readonly beam: Float64Array; // clear sky, normal [N] [W/m²]
	readonly diffuse: Float64Array; // clear sky, on the horizontal [N] [W/m²]
	readonly onPlane: PlaneColumns | undefined;
}

export interface PlaneColumns {
	readonly incidence: Float64Array; // angle between the sun and the normal of the plane, also at night [N] [rad]
	readonly total: Float64Array; // irradiance on the plane [N] [W/m²]
}

export interface SunDayProfile {
	readonly day: SunDay;
	readonly columns: SunDayColumns;
	readonly trackedBeam: number; // beam of the day on an aperture that tracks the sun on two axes [J/m²]
	readonly fixedPlane: { readonly beam: number; readonly total: number } | undefined; // of the day on the fixed plane [J/m²]
	readonly bestTiltOfDay: BestTilt | undefined; // undefined when the sun does not rise
	readonly bestTilts: readonly (BestTilt | undefined)[]; // of the requested periods, in their order
}

const DAY = 86_400; // [s]

/** One clear day at a site: sun and irradiance over the day, sums on a tracked aperture and on a fixed plane, best tilts.
 *  Sums use samples 2.5 minutes apart, independent of the step of the columns. */
export function sunDayProfile(site: Site, task: SunDayTask): SunDayProfile {
	requireWithin("sky.step", task.step, 10, DAY / 4);
	const day = sunDay(task.time, site.latitude, site.longitude);
	const samples = clearSamples(site, task.turbidity, { from: day.noon - DAY / 2, to: day.noon + DAY / 2 });
	return {
		day,
		columns: dayColumns(site, task, day.noon),
		trackedBeam: meanTrackedBeam(samples) * DAY,
		fixedPlane: task.plane && dayOnPlane(samples, task.plane, site.albedo),
		bestTiltOfDay: bestTilt(site, samples),
		bestTilts: task.periods.map((period) => bestTilt(site, clearSamples(site, task.turbidity, period))),
	};
}

function dayOnPlane(samples: ClearSamples, plane: Plane, albedo: number) {
	const mean = meanOnPlane(samples, plane, albedo);
	return { beam: mean.beam * DAY, total: mean.total * DAY };
}

function dayColumns(site: Site, { turbidity, plane, step }: SunDayTask, noon: number): SunDayColumns {
	const half = Math.floor(DAY / 2 / step);
	const column = () => new Float64Array(2 * half + 1);
	const [time, sunAltitude, sunAzimuth] = [column(), column(), column()];
	const [beam, diffuse] = [column(), column()];
	const onPlane = plane && { incidence: column(), total: column() };
	const pressure = standardPressure(site.elevation);
	for (let i = 0; i <= 2 * half; i++) {
		time[i] = noon + (i - half) * step;
		const now = clearInstant(site, turbidity, pressure, time[i]!);
		sunAltitude[i] = now.apparentAltitude;
		sunAzimuth[i] = now.azimuth;
		beam[i] = now.beam;
		diffuse[i] = now.diffuse;
		if (!plane || !onPlane) continue;
		const cosine = cosIncidence(now, plane.tilt, plane.azimuth);
		onPlane.incidence[i] = Math.acos(Math.max(-1, Math.min(1, cosine))); // rounding can exceed ±1
		onPlane.total[i] = planeIrradiance(now, now, plane, site.albedo).total;
	}
	return { time, sunAltitude, sunAzimuth, beam, diffuse, onPlane };
}
