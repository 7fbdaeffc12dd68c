import { DomainError } from "../errors.ts";

const LEAST_PECLET = 0.2; // [-] lower end of Churchill & Bernstein 1977

function churchillBernstein(Re: number, Pr: number): number {
	const prandtl = Math.cbrt(0.4 / Pr);
	const x = Re / 282_000;
	const half = Math.sqrt(x);
	const turbulent = Math.exp(0.8 * Math.log1p(half * Math.sqrt(Math.sqrt(half)))); // half the time of **
	const laminar = (0.62 * Math.sqrt(Re) * Math.cbrt(Pr)) / Math.sqrt(Math.sqrt(1 + prandtl * prandtl));
	return 0.3 + laminar * turbulent;
}

/** Mean Nusselt number of a cylinder in cross-flow (Churchill–Bernstein).
 *  Nu = 0.3 + 0.62 Re^½ Pr^⅓ · [1 + (0.4/Pr)^⅔]^-¼ · [1 + (Re/282 000)^⅝]^⅘
 *  @param Re  Reynolds number on the outer diameter, film properties [-]
 *  @param Pr  Prandtl number at film temperature [-]     @returns Nu on the outer diameter [-]
 *  Range   Re·Pr ≥ 0.2, else DomainError out_of_range
 *  Error   none given; the authors call it a lower bound of the data for Re·Pr > 0.4
 *  Source  Churchill & Bernstein, J. Heat Transfer 99 (1977) 300–306, doi:10.1115/1.3450685
 *  Check   Incropera 6e, ex. 7.3 and Çengel, ex. 7-5, tests/reference/heat.reference.ts */
export function nusseltCrossFlow(Re: number, Pr: number): number {
	if (!(Re * Pr >= LEAST_PECLET))
		throw new DomainError("out_of_range", "heat.crossFlow", "cross-flow needs Re·Pr of at least 0.2", {
			Re,
			Pr,
		});
	return churchillBernstein(Re, Pr);
}

/** The same for models that include still air: below Re·Pr 0.2 the value decreases in proportion to Re, to zero at rest.
 *  There free convection dominates (for a 20 mm pipe the range ends at 0.2 mm/s). */
export function nusseltCrossFlowFading(Re: number, Pr: number): number {
	const Peclet = Re * Pr;
	if (Peclet >= LEAST_PECLET) return churchillBernstein(Re, Pr);
	return (Peclet / LEAST_PECLET) * churchillBernstein(LEAST_PECLET / Pr, Pr);
}
