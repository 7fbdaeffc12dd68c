import { STEFAN_BOLTZMANN } from "../constants.ts";

/** Radiative film coefficient of a small grey surface in large surroundings: h = ε σ (Ts² + Te²)(Ts + Te).
 *  Exact for that case, finite where both temperatures are equal; the heat flux is h·(Ts − Te).
 *  @param emittance     of the surface, 0–1 [-]
 *  @param surface       temperature [K]     @param surroundings  radiant temperature [K]
 *  @returns             coefficient [W/m²K]
 *  Source  Stefan–Boltzmann law, factorised */
export function radiativeCoefficient(emittance: number, surface: number, surroundings: number): number {
	return (
		emittance *
		STEFAN_BOLTZMANN *
		(surface * surface + surroundings * surroundings) *
		(surface + surroundings)
	);
}

/** Temperature of a black sky that radiates like the clear sky: T = 0.0552 Ta^1.5.
 *  @param ambient  air temperature at screen height [K]     @returns sky temperature [K]
 *  Range   clear sky near sea level; cloud brings it close to the air, dry mountain air makes it colder by some kelvin
 *  Error   ± 5 K (common practice, no source)
 *  Source  Swinbank, Q. J. R. Meteorol. Soc. 89 (1963) 339–348
 *  Check   five points, tests/reference/heat.reference.ts */
export function skyTemperature(ambient: number): number {
	return 0.0552 * ambient * Math.sqrt(ambient);
}
