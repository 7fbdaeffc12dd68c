import { SOLAR_CONSTANT } from "../constants.ts";
import { requireWithin } from "../errors.ts";

const DAY = 86_400; // [s]
const FARTHEST = 8.64e12; // [s] end of the range of Date

/** Square of the mean over the actual distance to the sun (Spencer).
 *  (r0/r)² = 1.00011 + 0.034221 cos B + 0.00128 sin B + 0.000719 cos 2B + 0.000077 sin 2B, B = 2π·(n − 1)/365
 *  @param time  unix time [s]; the day number n is continuous, and an integer at noon UTC     @returns  [-], 0.967 to 1.035
 *  Error   0.0012 over 1990–2050, because perihelion and leap years have shifted since the fit (measured, see its test)
 *  Source  Spencer, Search 2 (1971) 172, as given by Duffie & Beckman, Solar Engineering of Thermal Processes, eq. 1.4.1b
 *  Check   NREL/TP-560-34302 (2008): 0.996542 AU on 2003-10-17   tests/reference/sun.reference.ts */
export function distanceFactor(time: number): number {
	requireWithin("time", time, -FARTHEST, FARTHEST);
	const newYear = Date.UTC(new Date(time * 1000).getUTCFullYear(), 0, 1) / 1000;
	const B = (2 * Math.PI * (time - newYear - DAY / 2)) / (365 * DAY); // n − 1 is 0 at noon of 1 January
	const cosB = Math.cos(B);
	const sinB = Math.sin(B);
	return (
		1.00011 + 0.034221 * cosB + 0.00128 * sinB + 0.000719 * (2 * cosB * cosB - 1) + 0.000077 * 2 * sinB * cosB
	);
}

/** Irradiance outside the atmosphere on a plane that faces the sun [W/m²]. */
export function extraterrestrialNormal(time: number): number {
	return SOLAR_CONSTANT * distanceFactor(time);
}
