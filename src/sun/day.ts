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
const HORIZON = (-0.8333 * Math.PI) / 180; // [rad] true altitude of the centre at sunrise: 34′ refraction + 16′ radius, almanac practice
const TOLERANCE = 0.01; // [s] of a rise or set

/** Rise, noon and set of the solar day whose noon is nearest.
 *  Rise and set are of the upper edge on a level horizon at sea level, as almanacs print them.
 *  Near a pole, on the one day when the sun comes up and stays, or goes and stays, it counts as up when it is up at noon.
 *  @param time  unix time [s]     @param latitude,longitude  [rad]
 *  Error   6 s of that definition to 65° latitude, half a minute at the polar circles (measured against an independent
 *          ephemeris, 1990–2050); refraction at a real horizon moves the event by a minute and more
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

/** When the sun crosses the meridian; the second pass takes up the half minute a day that the sundial drifts. */
function nearestNoon(time: number, longitude: number): number {
	const first = time - (hourAngle(time, longitude) * DAY) / (2 * Math.PI);
	return first - (hourAngle(first, longitude) * DAY) / (2 * Math.PI);
}
