import { requireWithin } from "../errors.ts";
import { power } from "../numeric/power.ts";
import { NUSSELT_LAMINAR } from "./internal-flow.ts";

const FULLY_TURBULENT = 22_000; // [-] VDI-Wärmeatlas, 9th ed. 2002, section Gc, as implemented in the open library FluidDissipation
const FRICTION_BLEND = 1.2; // [-] friction turns turbulent between Re_c and this multiple of it; chosen; without it the step is 5–15 %
const MOST_RATIO = 0.5; // [-] a tube with half the diameter of the helix can hardly be wound

/** Reynolds number at which flow in a helical tube turns turbulent: Re_c = 2300 [1 + 8.6 (d/D)^0.45].
 *  @param ratio  inner diameter of the tube over diameter of the helix [-]     @returns Re_c [-]
 *  Range   0 ≤ ratio ≤ 0.5, else DomainError out_of_range; 0 gives 2300, the value of a straight tube
 *  Error   Ito 1959 and Srinivasan 1968 are 3 to 8 % higher for ratios 0.04–0.1
 *  Source  Schmidt, Chem.-Ing.-Tech. 39 (1967) 781–789, as implemented in the open library fluids
 *  Check   five ratios, tests/reference/heat.reference.ts */
export function criticalReynoldsHelical(ratio: number): number {
	requireWithin("coil.diameterRatio", ratio, 0, MOST_RATIO);
	return 2300 * (1 + 8.6 * power(ratio, 0.45));
}

/** Laminar flow. Preferred to Schmidt and Manlapaz & Churchill because it was fitted to viscous liquids up to Pr 500. */
function laminarHelical(Re: number, Pr: number, ratio: number): number {
	return Math.max(NUSSELT_LAMINAR, 0.7 * power(Re, 0.43) * Math.sqrt(Math.cbrt(Pr)) * power(ratio, 0.07));
}

function turbulentHelical(Re: number, Pr: number, ratio: number): number {
	const f8 = (0.3164 / Math.sqrt(Math.sqrt(Re)) + 0.03 * Math.sqrt(ratio)) / 8;
	const root = Math.cbrt(Pr);
	return (f8 * Re * Pr) / (1 + 12.7 * Math.sqrt(f8) * (root * root - 1));
}

/** Mean Nusselt number inside a helical tube in any regime, continuous in Re.
 *  laminar    Nu = 0.7 Re^0.43 Pr^⅙ (d/D)^0.07, at least 3.66
 *  turbulent  Nu = (f/8) Re Pr / [1 + 12.7 √(f/8) (Pr^⅔ − 1)],  f = 0.3164 Re^-¼ + 0.03 √(d/D)      from Re 22 000
 *  between    linear in Re between the laminar value at Re_c and the turbulent one at 22 000
 *  @param Re  Reynolds number on the inner diameter [-]     @param Pr  Prandtl number at bulk temperature [-]
 *  @param ratio  inner diameter of the tube over diameter of the helix [-]     @returns Nu on the inner diameter [-]
 *  Range   0 ≤ ratio ≤ 0.5 and Re ≥ 0, else DomainError out_of_range; measured range: `helicalOutsideRange`
 *  Error   laminar oil: Dravid 1971 agrees within 7 %, but Schmidt 1967 is up to 1.7 times as high and Manlapaz &
 *          Churchill 1981 as low as 0.6 times, so the uncertainty of an answer is −40 / +70 %; turbulent ± 15 %
 *  Source  Janssen & Hoogendoorn, Int. J. Heat Mass Transfer 21 (1978) 1197–1206 (formula from memory);
 *          turbulent: Gnielinski in VDI-Wärmeatlas, 9th ed. 2002, section Gc, as implemented in the open library FluidDissipation
 *  Check   oil at 60–150 °C and Gnielinski points, tests/reference/heat.reference.ts */
export function nusseltHelical(Re: number, Pr: number, ratio: number): number {
	requireWithin("heat.Reynolds", Re, 0, Number.MAX_VALUE);
	const critical = criticalReynoldsHelical(ratio);
	if (Re <= critical) return laminarHelical(Re, Pr, ratio);
	if (Re >= FULLY_TURBULENT) return turbulentHelical(Re, Pr, ratio);
	const share = (Re - critical) / (FULLY_TURBULENT - critical);
	const laminar = laminarHelical(critical, Pr, ratio);
	return laminar + share * (turbulentHelical(FULLY_TURBULENT, Pr, ratio) - laminar);
}

/** Correction for a wall hotter or colder than the fluid, a factor on Nu: (Pr/Pr_wall)^0.14.
 *  Source  VDI Heat Atlas 2010, ch. G3, for liquids (value from memory); the viscosity ratio of Sieder & Tate 1936 */
export function wallPropertyFactor(Pr: number, PrWall: number): number {
	return power(Pr / PrWall, 0.14);
}

/** Whether `nusseltHelical` is used outside the measured range: laminar Re 20–4000, Pr 10–500, d/D 0.01–0.1
 *  (Janssen & Hoogendoorn 1978, range from memory); above Re_c Pr 0.5–2000 (Gnielinski, as for the straight tube). */
export function helicalOutsideRange(Re: number, Pr: number, ratio: number): boolean {
	if (Re > criticalReynoldsHelical(ratio)) return !(Pr >= 0.5 && Pr <= 2000);
	return !(Re >= 20 && Re <= 4000 && Pr >= 10 && Pr <= 500 && ratio >= 0.01 && ratio <= 0.1);
}

function laminarFriction(Re: number, ratio: number): number {
	const Dean = Re * Math.sqrt(ratio);
	const straight = 64 / Re;
	if (Dean <= 11.6) return straight;
	return straight / (1 - power(1 - power(11.6 / Dean, 0.45), 1 / 0.45));
}

/** Darcy friction factor of a smooth helical tube in any regime, continuous in Re.
 *  laminar    64/Re for De ≤ 11.6, above it 64/Re / {1 − [1 − (11.6/De)^0.45]^(1/0.45)},  De = Re √(d/D)
 *  turbulent  0.3164 Re^-¼ + 0.03 √(d/D), blended in linearly between Re_c and 1.2 Re_c
 *  @param Re  Reynolds number on the inner diameter, above 0 [-]
 *  @param ratio  inner diameter of the tube over diameter of the helix [-]     @returns f (Darcy) [-]
 *  Range   De ≤ 2000 laminar, Re ≤ 10⁵ turbulent
 *  Error   ± 5 % laminar, ± 10 % turbulent (common practice, no source); with 1/0.45 rounded to 2.2 it would be up to 1 % higher
 *  Source  White, Proc. R. Soc. A 123 (1929) 645–663; Mishra & Gupta, Ind. Eng. Chem. Process Des. Dev. 18 (1979) 130–137
 *  Check   five Dean numbers, tests/reference/flow.reference.ts */
export function frictionFactorHelical(Re: number, ratio: number): number {
	const critical = criticalReynoldsHelical(ratio);
	const share = (Re / critical - 1) / (FRICTION_BLEND - 1);
	if (share <= 0) return laminarFriction(Re, ratio);
	const turbulent = 0.3164 / Math.sqrt(Math.sqrt(Re)) + 0.03 * Math.sqrt(ratio);
	if (share >= 1) return turbulent;
	return (1 - share) * laminarFriction(Re, ratio) + share * turbulent;
}
