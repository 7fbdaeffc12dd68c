import { requireWithin } from "../errors.ts";
import { hourAngle } from "../sun/position.ts";
import { ambientThroughDay } from "./ambient.ts";
import { standardPressure } from "./atmosphere.ts";
import { clearInstant } from "./clear-instant.ts";
import type { Site } from "./site.ts";
import type { Weather } from "./weather.ts";

/** Parameters of a cloudless day. */
export interface ClearSky {
	readonly turbidity: number; // Linke, at air mass 2 [-]
	readonly ambientMinimum: number; // air temperature at dawn [K]
	readonly ambientMaximum: number; // air temperature in mid-afternoon [K]
	readonly wind: number; // all day [m/s]
}

/** Weather under a cloudless sky.
 *  Assumes  standard pressure of the elevation, a level horizon, the same temperatures and wind every day
 *  @param times  unix times [N] [s]
 *  Error   that of `clearSky`, mostly from the uncertainty of the turbidity */
export function clearWeather(site: Site, sky: ClearSky, times: Float64Array): Weather {
	requireWithin("sky.ambientMinimum", sky.ambientMinimum, 150, sky.ambientMaximum);
	requireWithin("sky.ambientMaximum", sky.ambientMaximum, sky.ambientMinimum, 350);
	requireWithin("sky.wind", sky.wind, 0, 100);
	const pressure = standardPressure(site.elevation);
	const count = times.length;
	const weather = {
		time: times.slice(),
		sunAltitude: new Float64Array(count),
		sunAzimuth: new Float64Array(count),
		beam: new Float64Array(count),
		diffuse: new Float64Array(count),
		ambient: new Float64Array(count),
		wind: new Float64Array(count).fill(sky.wind),
	};
	for (let i = 0; i < count; i++) {
		const time = times[i]!;
		const now = clearInstant(site, sky.turbidity, pressure, time);
		weather.sunAltitude[i] = now.apparentAltitude;
		weather.sunAzimuth[i] = now.azimuth;
		weather.beam[i] = now.beam;
		weather.diffuse[i] = now.diffuse;
		const solarTime = (0.5 + hourAngle(time, site.longitude) / (2 * Math.PI)) * 86_400;
		weather.ambient[i] = ambientThroughDay(sky.ambientMinimum, sky.ambientMaximum, solarTime);
	}
	return weather;
}
