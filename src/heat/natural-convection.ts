import { requireWithin } from "../errors.ts";

const MOST_RAYLEIGH = 1e12; // [-] upper end of Churchill & Chu 1975, both papers
const MOST_RAYLEIGH_FACE = 1e11; // [-] upper end of McAdams's horizontal faces, Incropera 6e eq. 9.31

/** [1 + (a/Pr)^(9/16)]^(8/27): effect of the Prandtl number in the correlations of Churchill & Chu. */
function prandtlWeight(a: number, Pr: number): number {
	const ratio = a / Pr;
	const sixteenth = Math.sqrt(Math.sqrt(Math.sqrt(Math.sqrt(ratio))));
	return Math.exp((8 / 27) * Math.log1p(Math.sqrt(ratio) * sixteenth)); // takes half the time of **
}

/** Mean Nusselt number of a long horizontal cylinder in still fluid (Churchill–Chu).
 *  Nu = {0.60 + 0.387 Ra^⅙ / [1 + (0.559/Pr)^(9/16)]^(8/27)}²
 *  @param Ra  Rayleigh number on the outer diameter, film properties [-]
 *  @param Pr  Prandtl number at film temperature [-]     @returns Nu on the outer diameter [-]
 *  Range   0 ≤ Ra ≤ 10¹², else DomainError out_of_range; every Pr
 *  Error   none given; at Ra 10⁵ Morgan 1975 lies 10 % higher
 *  Source  Churchill & Chu, Int. J. Heat Mass Transfer 18 (1975) 1049–1053
 *  Check   Çengel, ex. 9-1 and Incropera 6e, ex. 9.4, tests/reference/heat.reference.ts */
export function nusseltHorizontalCylinder(Ra: number, Pr: number): number {
	requireWithin("heat.Rayleigh", Ra, 0, MOST_RAYLEIGH);
	const root = 0.6 + (0.387 * Math.sqrt(Math.cbrt(Ra))) / prandtlWeight(0.559, Pr);
	return root * root;
}

/** Mean Nusselt number of an upright plate in still fluid (Churchill–Chu); valid for an upright cylinder much wider than
 *  its boundary layer.
 *  Nu = {0.825 + 0.387 Ra^⅙ / [1 + (0.492/Pr)^(9/16)]^(8/27)}²
 *  @param Ra  Rayleigh number on the height, film properties [-]
 *  @param Pr  Prandtl number at film temperature [-]     @returns Nu on the height [-]
 *  Range   0 ≤ Ra ≤ 10¹², else DomainError out_of_range; every Pr
 *  Error   none given; the authors' second equation, for laminar layers only, lies 15 % lower at Ra 7·10⁷
 *  Source  Churchill & Chu, Int. J. Heat Mass Transfer 18 (1975) 1323–1329
 *  Check   Incropera 6e, ex. 9.2, tests/reference/heat.reference.ts */
export function nusseltVerticalPlate(Ra: number, Pr: number): number {
	requireWithin("heat.Rayleigh", Ra, 0, MOST_RAYLEIGH);
	const root = 0.825 + (0.387 * Math.sqrt(Math.cbrt(Ra))) / prandtlWeight(0.492, Pr);
	return root * root;
}

/** Mean Nusselt number of a hot face that faces up, or a cold one that faces down (McAdams).
 *  Nu = 0.54 Ra^¼ or 0.15 Ra^⅓, whichever is greater: they cross at Ra 4.7·10⁶; the source changes over at 10⁷ with a step of 6 %.
 *  @param Ra  Rayleigh number on area over perimeter, film properties [-]     @returns Nu on that length [-]
 *  Range   published for 10⁴ ≤ Ra ≤ 10¹¹; extrapolated below, to zero at Ra 0; above DomainError out_of_range
 *  Error   none given; faces with free edges scatter by about 15 % (common practice, no source)
 *  Source  McAdams, Heat Transmission, 3e, McGraw-Hill 1954; Incropera 6e, eqs. 9.30, 9.31
 *  Check   Incropera 6e, ex. 9.3, tests/reference/heat.reference.ts */
export function nusseltHotPlateUp(Ra: number): number {
	requireWithin("heat.Rayleigh", Ra, 0, MOST_RAYLEIGH_FACE);
	return Math.max(0.54 * Math.sqrt(Math.sqrt(Ra)), 0.15 * Math.cbrt(Ra));
}

/** Mean Nusselt number of a hot face that faces down, or a cold one that faces up (McAdams): Nu = 0.27 Ra^¼.
 *  @param Ra  Rayleigh number on area over perimeter, film properties [-]     @returns Nu on that length [-]
 *  Range   published for 10⁵ ≤ Ra ≤ 10¹⁰; extrapolated to zero at Ra 0 and up to 10¹¹; above DomainError out_of_range
 *  Error   none given; about 20 % (common practice, no source): the surroundings of the face affect the outflow
 *  Source  McAdams, Heat Transmission, 3e, McGraw-Hill 1954; Incropera 6e, eq. 9.32
 *  Check   Incropera 6e, ex. 9.3, tests/reference/heat.reference.ts */
export function nusseltHotPlateDown(Ra: number): number {
	requireWithin("heat.Rayleigh", Ra, 0, MOST_RAYLEIGH_FACE);
	return 0.27 * Math.sqrt(Math.sqrt(Ra));
}
