import { DomainError } from "../errors.ts";
import { power } from "../numeric/power.ts";

const LEAST_PRANDTL = 0.6; // [-] Incropera 6e, eq. 7.38
const MOST_PRANDTL = 60; // [-] idem
const MOST_REYNOLDS = 1e8; // [-] idem

/** Mean Nusselt number of a flat plate in parallel flow.
 *  Nu = 0.664 Re^½ Pr^⅓, above their crossing near Re 5·10⁵ (0.037 Re^⅘ − 871) Pr^⅓: whichever is greater.
 *  @param Re  Reynolds number on the length in flow direction, film properties [-]
 *  @param Pr  Prandtl number at film temperature [-]     @returns Nu on that length [-]
 *  Range   0.6 ≤ Pr ≤ 60 and 0 ≤ Re ≤ 10⁸, else DomainError out_of_range
 *  Error   ± 15 % (mixed layer); gusts and edges trip the layer earlier and increase the value
 *  Source  Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, 6e, Wiley 2007, eqs. 7.30, 7.38
 *  Check   Pr 0.7 at Re 10⁵ and 10⁶, tests/reference/heat.reference.ts */
export function nusseltFlatPlate(Re: number, Pr: number): number {
	if (!(Pr >= LEAST_PRANDTL && Pr <= MOST_PRANDTL && Re >= 0 && Re <= MOST_REYNOLDS))
		throw new DomainError(
			"out_of_range",
			"heat.plateFlow",
			"plate flow needs Pr within 0.6 to 60 and Re up to 1e8",
			{
				Re,
				Pr,
			},
		);
	const laminar = 0.664 * Math.sqrt(Re);
	if (Re < 1e5) return laminar * Math.cbrt(Pr);
	return Math.max(laminar, 0.037 * power(Re, 0.8) - 871) * Math.cbrt(Pr);
}
