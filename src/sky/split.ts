import { requireWithin } from "../errors.ts";

/** Beam and diffuse parts of the global irradiance [W/m²]: global = beam·sin α + diffuse. */
export interface BeamAndDiffuse {
	readonly beam: number; // on a plane normal to it
	readonly diffuse: number; // on the horizontal
}

const LOWEST_ALTITUDE = (3 * Math.PI) / 180; // below it a beam derived from horizontal irradiance is noise; common practice, no source

/** Share of diffuse in the global irradiance of an hour (Erbs, Klein & Duffie).
 *  k ≤ 0.22: 1 − 0.09 k;  k ≤ 0.80: 0.9511 − 0.1604 k + 4.388 k² − 16.638 k³ + 12.336 k⁴;  above: 0.165
 *  @param clearness  global over extraterrestrial, both on the horizontal, k [-]     @returns  [-], 0.165 to 1
 *  Range   k ≥ 0, else DomainError out_of_range
 *  Error   single hours scatter widely about the fit; only sums over many hours are reliable
 *  Source  Erbs, Klein & Duffie, Solar Energy 28 (1982) 293–302, doi:10.1016/0038-092X(82)90302-4
 *  Check   k 0.445 → 0.766   tests/reference/sky.reference.ts */
export function diffuseFraction(clearness: number): number {
	requireWithin("sky.clearness", clearness, 0, Number.MAX_VALUE);
	const k = clearness;
	if (k <= 0.22) return 1 - 0.09 * k;
	if (k <= 0.8) return 0.9511 + k * (-0.1604 + k * (4.388 + k * (-16.638 + k * 12.336)));
	return 0.165;
}

/** Beam and diffuse from the global alone (Erbs, Klein & Duffie).
 *  With the sun below 3° all irradiance is diffuse. The part above a clearness of one, as between bright clouds, is diffuse too,
 *  so that the beam is at most 0.835 of the extraterrestrial.
 *  @param global            on the horizontal [W/m²]     @param extraterrestrial  normal [W/m²]
 *  @param apparentAltitude  of the sun [rad] */
export function splitGlobal(
	global: number,
	extraterrestrial: number,
	apparentAltitude: number,
): BeamAndDiffuse {
	requireWithin("sky.global", global, 0, Number.MAX_VALUE);
	if (!(apparentAltitude > LOWEST_ALTITUDE)) return { beam: 0, diffuse: global };
	const sine = Math.sin(apparentAltitude);
	const clearness = Math.min(1, global / (extraterrestrial * sine));
	const beam = (1 - diffuseFraction(clearness)) * clearness * extraterrestrial;
	return { beam, diffuse: global - beam * sine };
}

/** Beam from measured global and diffuse [W/m²]: zero with the sun below 3°, where their difference is noise,
 *  and limited to values from zero to the extraterrestrial, because others come from instrument errors. */
export function beamFromDiffuse(
	global: number,
	diffuse: number,
	extraterrestrial: number,
	apparentAltitude: number,
): number {
	if (!(apparentAltitude > LOWEST_ALTITUDE)) return 0;
	return Math.min(extraterrestrial, Math.max(0, (global - diffuse) / Math.sin(apparentAltitude)));
}
