import { STANDARD_PRESSURE } from "../constants.ts";
import { requireWithin } from "../errors.ts";
import { power } from "../numeric/power.ts";

/** Relative optical air mass (Kasten & Young).
 *  m = 1/[sin h + 0.50572·(h + 6.07995)^-1.6364], h in degrees
 *  @param apparentAltitude  with refraction [rad]     @returns  [-], 1 overhead to 37.9 at the horizon
 *  Range   0 to 90°, else DomainError out_of_range
 *  Error   0.5 % against the authors' table
 *  Source  Kasten & Young, Applied Optics 28 (1989) 4735–4738, doi:10.1364/AO.28.004735
 *  Check   the formula by hand: 60° from the zenith → 1.9943   tests/reference/sky.reference.ts */
export function relativeAirMass(apparentAltitude: number): number {
	requireWithin("sky.sunAltitude", apparentAltitude, 0, Math.PI / 2);
	const degrees = (apparentAltitude * 180) / Math.PI;
	return 1 / (Math.sin(apparentAltitude) + 0.50572 * power(degrees + 6.07995, -1.6364));
}

/** Air mass relative to the vertical path at sea level [-]. */
export function absoluteAirMass(apparentAltitude: number, pressure: number): number {
	return (relativeAirMass(apparentAltitude) * pressure) / STANDARD_PRESSURE;
}
