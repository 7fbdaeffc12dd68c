import { requireWithin } from "../errors.ts";

export const NUSSELT_LAMINAR = 3.66; // [-] developed laminar flow in a round tube of uniform wall temperature, Graetz 1883
const LAMINAR_END = 2300; // [-] VDI Heat Atlas 2010, ch. G1, sect. 4.2 (quoted in a public copy)
const TURBULENT_START = 4000; // [-] idem
const TURBULENT_END = 5e6; // [-] Gnielinski 1976

/** Nusselt number of developed turbulent flow in a smooth tube (Gnielinski).
 *  Nu = (f/8)(Re − 1000) Pr / [1 + 12.7 √(f/8) (Pr^⅔ − 1)],  f = (0.79 ln Re − 1.64)⁻² (Petukhov, Darcy)
 *  @param Re  Reynolds number on the inner diameter [-]     @param Pr  Prandtl number at bulk temperature [-]
 *  @returns   Nu on the inner diameter [-]
 *  Range   2300 ≤ Re ≤ 5·10⁶, else DomainError out_of_range; fitted to 0.5 ≤ Pr ≤ 2000, not checked
 *  Error   ± 10 % of the data, according to the author. Neglected: (Pr/Pr_wall)^0.11 and entrance effect, together a few per cent in a pipe
 *  Source  Gnielinski, Int. Chem. Eng. 16 (1976) 359–368
 *  Check   five points, tests/reference/pipe.reference.ts */
export function nusseltGnielinski(Re: number, Pr: number): number {
	requireWithin("heat.Reynolds", Re, LAMINAR_END, TURBULENT_END);
	const root = 0.79 * Math.log(Re) - 1.64;
	const f8 = 1 / (8 * root * root);
	const prandtlRoot = Math.cbrt(Pr);
	return (f8 * (Re - 1000) * Pr) / (1 + 12.7 * Math.sqrt(f8) * (prandtlRoot * prandtlRoot - 1));
}

/** Mean Nusselt number of laminar flow that heats up or cools along a tube (Hausen).
 *  Nu = 3.66 + 0.0668 Gz / (1 + 0.04 Gz^⅔)
 *  @param Gz  Graetz number Re·Pr·diameter/length [-]     @returns Nu on the inner diameter [-]
 *  Range   Gz ≥ 0; laminar; uniform wall temperature; velocity profile developed
 *  Error   none given; within 3 % of the later constant 0.065 of Edwards, Denny & Mills 1979
 *  Source  Hausen, Z. VDI Beih. Verfahrenstechnik 4 (1943) 91–98
 *  Check   four points, tests/reference/pipe.reference.ts */
export function nusseltHausen(Gz: number): number {
	const root = Math.cbrt(Gz);
	return NUSSELT_LAMINAR + (0.0668 * Gz) / (1 + 0.04 * root * root);
}

/** Mean Nusselt number inside a straight tube in any regime, continuous in Re.
 *  Hausen up to Re 2300, Gnielinski from 4000, linear in Re between them.
 *  @param Re  Reynolds number on the inner diameter [-]     @param Pr  Prandtl number at bulk temperature [-]
 *  @param diameterOverLength  inner diameter over heated length [-]
 *  @returns   Nu on the inner diameter, at least 3.66 [-]
 *  Range   0 ≤ Re ≤ 5·10⁶, else DomainError out_of_range
 *  Source  blend after Gnielinski in VDI Heat Atlas, 2nd ed., Springer 2010, ch. G1, sect. 4.2 (quoted in a public copy, from
 *          2300 to 10 000; here to 4000) */
export function nusseltPipe(Re: number, Pr: number, diameterOverLength: number): number {
	requireWithin("heat.Reynolds", Re, 0, TURBULENT_END);
	if (Re <= LAMINAR_END) return nusseltHausen(Re * Pr * diameterOverLength);
	if (Re >= TURBULENT_START) return Math.max(NUSSELT_LAMINAR, nusseltGnielinski(Re, Pr));
	const share = (Re - LAMINAR_END) / (TURBULENT_START - LAMINAR_END);
	const laminar = nusseltHausen(LAMINAR_END * Pr * diameterOverLength);
	const turbulent = Math.max(NUSSELT_LAMINAR, nusseltGnielinski(TURBULENT_START, Pr));
	return laminar + share * (turbulent - laminar);
}
