import { requireWithin } from "../errors.ts";
import { hayDaviesParts, type Plane } from "../sun/plane.ts";
import { standardPressure } from "./atmosphere.ts";
import { clearInstant } from "./clear-instant.ts";
import type { Site } from "./site.ts";

/** A period between two unix times [s]. */
export interface Period {
	readonly from: number;
	readonly to: number;
}

/** Sun and clear sky sampled over a period: directions and irradiances, from which the sum on any plane follows. */
export interface ClearSamples {
	readonly east: Float64Array; // of the unit vector to the sun [N]
	readonly north: Float64Array;
	readonly up: Float64Array;
	readonly beam: Float64Array; // normal [N] [W/m²]
	readonly circumsolar: Float64Array; // treated as beam [N] [W/m²]
	readonly isotropic: number; // isotropic diffuse, mean of the period [W/m²]
	readonly global: number; // on the horizontal, mean of the period [W/m²]
}

/** Irradiance on a plane, mean of a period, day and night [W/m²]. */
export interface MeanOnPlane {
	readonly beam: number;
	readonly total: number;
}

const DAY = 86_400; // [s]
const MOST_SAMPLES = 1000; // of a period
const GOLDEN_RATIO = (Math.sqrt(5) - 1) / 2;

/** About a thousand samples of the clear sky, evenly spaced over a period of whole days.
 *  The number per day is an integer plus the golden ratio, so that the samples cover all hours: a year needs three per day.
 *  Error   mean on a plane within 0.3 % + 0.01 W/m² of a sum in steps of two minutes (measured, see its test) */
export function clearSamples(site: Site, turbidity: number, period: Period): ClearSamples {
	const span = period.to - period.from;
	requireWithin("sky.period", span, DAY / 2, 400 * DAY);
	const count = Math.ceil((Math.floor((MOST_SAMPLES * DAY) / span) + GOLDEN_RATIO) * (span / DAY));
	const pressure = standardPressure(site.elevation);
	const column = () => new Float64Array(count);
	const [east, north, up, beam, circumsolar] = [column(), column(), column(), column(), column()];
	let isotropic = 0;
	let global = 0;
	for (let i = 0; i < count; i++) {
		const time = period.from + ((i + 0.5) / count) * span;
		const now = clearInstant(site, turbidity, pressure, time);
		if (now.apparentAltitude <= 0) continue; // zeros at night
		const level = Math.cos(now.apparentAltitude);
		const sine = Math.sin(now.apparentAltitude);
		const parts = hayDaviesParts(now, sine);
		east[i] = level * Math.sin(now.azimuth);
		north[i] = level * Math.cos(now.azimuth);
		up[i] = sine;
		beam[i] = now.beam;
		circumsolar[i] = parts.circumsolar;
		isotropic += parts.isotropic / count;
		global += (now.beam * sine + now.diffuse) / count;
	}
	return { east, north, up, beam, circumsolar, isotropic, global };
}

/** Mean irradiance on a fixed plane over the samples (Hay & Davies diffuse): the mean of `planeIrradiance`. */
export function meanOnPlane(samples: ClearSamples, plane: Plane, albedo: number): MeanOnPlane {
	const { east, north, up, beam, circumsolar, isotropic, global } = samples;
	const cosTilt = Math.cos(plane.tilt);
	const toEast = Math.sin(plane.tilt) * Math.sin(plane.azimuth);
	const toNorth = Math.sin(plane.tilt) * Math.cos(plane.azimuth);
	let fromBeam = 0;
	let fromCircumsolar = 0;
	for (let i = 0; i < up.length; i++) {
		const facing = up[i]! * cosTilt + east[i]! * toEast + north[i]! * toNorth;
		if (facing <= 0) continue;
		fromBeam += beam[i]! * facing;
		fromCircumsolar += circumsolar[i]! * facing;
	}
	const even = (isotropic * (1 + cosTilt) + albedo * global * (1 - cosTilt)) / 2;
	return { beam: fromBeam / up.length, total: (fromBeam + fromCircumsolar) / up.length + even };
}

/** Mean beam on an aperture that always faces the sun, day and night [W/m²]. */
export function meanTrackedBeam(samples: ClearSamples): number {
	return samples.beam.reduce((sum, beam) => sum + beam, 0) / samples.beam.length;
}
