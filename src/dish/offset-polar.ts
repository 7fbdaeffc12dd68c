const EQUINOX_INCLINATION = (43.23 * Math.PI) / 180; // [rad] of the mirror's rim to the plane normal to the beam, Munir et al. 2010 (value from memory)

/** Aperture of an off-axis dish that turns on a polar axis about a fixed focus and is reshaped through the year:
 *  the projection of its mirror normal to the beam.
 *  A = A_m·cos(43.23° + s·δ/2), s = +1 at northern latitudes and on the equator, −1 at southern ones
 *  @param mirrorArea   A_m [m²]
 *  @param latitude     of the site, north positive [rad]; only its sign matters
 *  @param declination  δ of the sun [rad]          @returns A [m²]
 *  Range   |δ| ≤ 23.45°; the inclination is that of one design; others differ by a degree or two
 *  Error   none given
 *  Source  Munir, Hensel & Scheffler, Solar Energy 84 (2010) 1490–1502 (formula from memory)
 *  Check   8 m² → 5.83 at equinox, 4.59 in summer, 6.82 m² in winter   tests/reference/dish.reference.ts */
export function offsetPolarAperture(mirrorArea: number, latitude: number, declination: number): number {
	const hemisphere = latitude < 0 ? -1 : 1;
	return mirrorArea * Math.cos(EQUINOX_INCLINATION + (hemisphere * declination) / 2);
}
