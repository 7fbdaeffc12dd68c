import { boundedMaximum } from "../numeric/minimize.ts";
import type { Plane } from "../sun/plane.ts";
import { type ClearSamples, meanOnPlane } from "./clear-samples.ts";
import type { Site } from "./site.ts";

/** The fixed plane with the greatest irradiation. */
export interface BestTilt {
	readonly plane: Plane;
	readonly dailyTotal: number; // beam, diffuse and ground-reflected on that plane, mean day of the period [J/m²]
}

const DAY = 86_400; // [s]
const TOLERANCE = Math.PI / 3600; // [rad] 0.05°; the optimum is flat: 1° costs 0.02 %

/** Best fixed tilt towards the equator under a clear sky, 0 to 90°; undefined when the sun does not rise.
 *  The plane faces south (π) at northern latitudes and on the equator, north (0) at southern ones. A tilt of 0 is level:
 *  within the tropics, when the sun passes on the side of the pole, no tilt is better.
 *  Clouds would lower the best tilt slightly, because diffuse irradiance is greatest on a level plane. */
export function bestTilt(site: Site, samples: ClearSamples): BestTilt | undefined {
	if (!(samples.global > 0)) return undefined;
	const azimuth = site.latitude >= 0 ? Math.PI : 0;
	const total = (tilt: number) => meanOnPlane(samples, { tilt, azimuth }, site.albedo).total;
	const tilt = boundedMaximum(total, 0, Math.PI / 2, TOLERANCE);
	return { plane: { tilt, azimuth }, dailyTotal: total(tilt) * DAY };
}
