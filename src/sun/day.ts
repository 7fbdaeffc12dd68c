import { bracketedRoot } from "../numeric/root.ts";
import { hourAngle, sunPosition } from "./position.ts";

/** The solar day around one noon: from the midnight before it to the midnight after. Times are unix times [s]. */
export type SunDay =
	| {
			readonly kind: "riseAndSet";
			readonly sunrise: number;
			readonly noon: number;
			readonly sunset: number;
			readonly dayLength: number; // [s]
	  }
	| { readonly kind: "alwaysUp"; readonly noon: number }
	| { readonly kind: "alwaysDown"; readonly noon: number };

const DAY = 86_400; // [s]
const HORIZON = (-0.8333 * Math.PI) / 180; // [rad] true altitude of the centre at sunrise: 34′ refraction + 16′ radius, as almanacs use it
const TOLERANCE = 0.01; // [s] of a rise or set

/** Rise, noon and set of the solar day whose noon is nearest.
 *  Rise and set are those of the upper edge on a level horizon at sea level, as in almanacs.
 *  Near a pole, on the day on which the polar day or night begins, the sun counts as up if it is up at noon.
 *  @param time  unix time [s]     @param latitude,longitude  [rad]
 *  Error   6 s against that definition to 65° latitude, half a minute at the polar circles (measured against an independent
 *          ephemeris, 1990–2050); refraction at a real horizon can shift the event by more than a minute
 *  Check   NREL/TP-560-34302 (2008) table A2.1   tests/reference/sun.reference.ts */
export function sunDay(time: number, latitude: number, longitude: number): SunDay {
	const noon = nearestNoon(time, longitude);
	const height = (t: number) => sunPosition(t, latitude, longitude).trueAltitude - HORIZON;
	if (!(height(noon) > 0)) return { kind: "alwaysDown", noon };
	if (height(noon - DAY / 2) > 0 || height(noon + DAY / 2) > 0) return { kind: "alwaysUp", noon };
	const sunrise = bracketedRoot(height, noon - DAY / 2, noon, TOLERANCE);
	const sunset = bracketedRoot(height, noon, noon + DAY / 2, TOLERANCE);
	return { kind: "riseAndSet", sunrise, noon, sunset, dayLength: sunset - sunrise };
}

/** Time at which the sun crosses the meridian; the second pass corrects for the daily change of the equation of time, up to half a minute. */
function nearestNoon(time: number, longitude: number): number {
	const first = time - (hourAngle(time, longitude) * DAY) / (2 * Math.PI);
	return first - (hourAngle(first, longitude) * DAY) / (2 * Math.PI);
}
