import { getPosition } from "suncalc";
import { requireWithin } from "../errors.ts";

// Angles, throughout src/: radians. Altitude from the horizon, upward positive. Azimuth clockwise from north (east π/2).
// Latitude north positive, longitude east positive. Hour angle zero at solar noon, positive after it.
// Tilt of a plane from the horizontal; its azimuth is the way it faces. Time is unix time [s].

/** Apparent direction of the sun. */
export interface SunDirection {
	readonly apparentAltitude: number; // with refraction [rad]
	readonly azimuth: number; // clockwise from north [rad], 0 to 2π
}

export interface SunPosition extends SunDirection {
	readonly trueAltitude: number; // without refraction [rad]
}

const RADIAN = Math.PI / 180;
const DAY = 86_400; // [s] mean solar day
const EARLIEST = -2_208_988_800; // [s] 1900-01-01 UTC; start of the fit of the Earth's rotation
const LATEST = 5_680_281_600; // [s] 2150-01-01 UTC, its end
const REFRACTION_PRESSURE = 101_000; // [Pa] air that the refraction formula is for (at 10 °C), Meeus ch. 16
const NEWTON_STEPS = 8; // three are enough for 1e-12 rad

/** Position of the sun's centre (Meeus ch. 25, through the package suncalc).
 *  Apparent altitude includes sea-level refraction; below the horizon it includes that of the horizon, 0.48°.
 *  @param latitude,longitude  [rad]
 *  Range   1900 to 2150, else DomainError out_of_range
 *  Error   true altitude and azimuth (great circle) within 0.02° over 1990–2050
 *  Source  Meeus, Astronomical Algorithms, 2nd ed. 1998, ch. 16, 25
 *  Check   Reda & Andreas, NREL/TP-560-34302 (2008), the example of 2003-10-17   tests/reference/sun.reference.ts */
export function sunPosition(time: number, latitude: number, longitude: number): SunPosition {
	requireWithin("time", time, EARLIEST, LATEST);
	requireWithin("site.latitude", latitude, -Math.PI / 2, Math.PI / 2);
	requireWithin("site.longitude", longitude, -2 * Math.PI, 2 * Math.PI);
	const seen = getPosition(new Date(time * 1000), latitude / RADIAN, longitude / RADIAN);
	const apparentAltitude = seen.altitude * RADIAN;
	return {
		apparentAltitude,
		trueAltitude: withoutRefraction(apparentAltitude),
		azimuth: seen.azimuth * RADIAN,
	};
}

/** Apparent altitude of the sun in air of a given pressure.
 *  R = 1.02′ / tan(h + 10.3/(h + 5.11)), h in degrees, × p/1010 hPa
 *  @param trueAltitude  [rad]     @param pressure  of the air at the observer [Pa]     @returns  [rad]
 *  Range   below the horizon the refraction of the horizon is used
 *  Error   0.002° above 10°; air temperature is neglected (3 % of R for 10 K)
 *  Source  Sæmundsson, Sky & Telescope 72 (1986) 70, as in Meeus eq. 16.4, with the constants as rounded in suncalc */
export function apparentAltitudeAt(trueAltitude: number, pressure: number): number {
	return trueAltitude + (refraction(trueAltitude) * pressure) / REFRACTION_PRESSURE;
}

/** Angle of the sun north of the celestial equator [rad]: its true altitude at the pole. */
export function declination(time: number): number {
	return sunPosition(time, Math.PI / 2, 0).trueAltitude;
}

/** Angle by which the sun has passed the meridian of a longitude [rad], −π to π. */
export function hourAngle(time: number, longitude: number): number {
	return halfTurn(sunPosition(time, Math.PI / 2, 0).azimuth - Math.PI + longitude); // at the pole the azimuth follows the hour angle
}

/** Apparent solar time minus mean solar time [s], between −860 and 990. */
export function equationOfTime(time: number): number {
	return (halfTurn(hourAngle(time, 0) - 2 * Math.PI * (time / DAY - 0.5)) * DAY) / (2 * Math.PI);
}

/** The same angle between −π and π. */
function halfTurn(angle: number): number {
	return angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
}

/** Refraction in air at 1010 hPa [rad]. The constants are those of eq. 16.4 in radians, as in suncalc. */
function refraction(trueAltitude: number): number {
	const h = Math.max(0, trueAltitude);
	return 0.0002967 / Math.tan(h + 0.00312536 / (h + 0.08901179));
}

/** True altitude of an apparent one: inverse of `refraction` by Newton's method; unique because refraction decreases with altitude. */
function withoutRefraction(apparent: number): number {
	const atHorizon = refraction(0);
	if (apparent <= atHorizon) return apparent - atHorizon;
	let h = Math.max(0, apparent - refraction(apparent));
	for (let i = 0; i < NEWTON_STEPS; i++) {
		const tangent = Math.tan(h + 0.00312536 / (h + 0.08901179));
		const excess = h + 0.0002967 / tangent - apparent;
		const inner = 1 - 0.00312536 / ((h + 0.08901179) * (h + 0.08901179));
		const change = excess / (1 - 0.0002967 * (1 + 1 / (tangent * tangent)) * inner);
		h -= change;
		if (Math.abs(change) < 1e-12) break;
	}
	return h;
}
