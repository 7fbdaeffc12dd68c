import { requireWithin } from "../errors.ts";

/** Standard score that a normal variable does not exceed with a given probability.
 *  z = t − (c0 + c1 t + c2 t²)/(1 + d1 t + d2 t² + d3 t³),  t = √(−2 ln p), for p ≤ ½; p > ½ by symmetry
 *  @param probability  p [-]     @returns z [-]
 *  Range   0 < p < 1, else DomainError out_of_range
 *  Error   |Δz| < 4.5e-4
 *  Source  Abramowitz & Stegun, Handbook of Mathematical Functions, 1964, 26.2.23, as printed in public copies
 *  Check   five quantiles of the table, tests/unit/numeric/normal-score.test.ts */
export function normalScore(probability: number): number {
	requireWithin("numeric.probability", probability, Number.MIN_VALUE, 1 - Number.EPSILON / 2);
	if (probability > 0.5) return -normalScore(1 - probability);
	const t = Math.sqrt(-2 * Math.log(probability));
	const above = 2.515517 + t * (0.802853 + t * 0.010328);
	const below = 1 + t * (1.432788 + t * (0.189269 + t * 0.001308));
	return above / below - t;
}
