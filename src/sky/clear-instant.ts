import { extraterrestrialNormal } from "../sun/orbit.ts";
import type { SkyIrradiance } from "../sun/plane.ts";
import { apparentAltitudeAt, type SunDirection, sunPosition } from "../sun/position.ts";
import { absoluteAirMass } from "./air-mass.ts";
import { clearSky } from "./clear-sky.ts";
import type { Site } from "./site.ts";

/** Sun position at a site and irradiance under a cloudless sky. */
export interface ClearInstant extends SunDirection, SkyIrradiance {}

/** Sun and clear-sky irradiance at one instant.
 *  @param turbidity  Linke turbidity at air mass 2 [-]     @param pressure  of the air at the site [Pa]
 *  @param time       unix time [s]
 *  The apparent altitude includes refraction at the pressure of the site. */
export function clearInstant(site: Site, turbidity: number, pressure: number, time: number): ClearInstant {
	const { trueAltitude, azimuth } = sunPosition(time, site.latitude, site.longitude);
	const apparentAltitude = apparentAltitudeAt(trueAltitude, pressure);
	const extraterrestrial = extraterrestrialNormal(time);
	if (apparentAltitude <= 0) return { apparentAltitude, azimuth, beam: 0, diffuse: 0, extraterrestrial };
	const airMass = absoluteAirMass(apparentAltitude, pressure);
	const { beam, diffuse } = clearSky(turbidity, site.elevation, apparentAltitude, airMass, extraterrestrial);
	return { apparentAltitude, azimuth, beam, diffuse, extraterrestrial };
}
