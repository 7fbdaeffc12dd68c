import { requireWithin } from "../errors.ts";

const Z = 1.959963984540054; // standard normal at 0.975; Abramowitz & Stegun, table 26.5

/** 97.5 % quantile of Student's t distribution: ± t standard errors are a 95 % interval.
 *  t = z + g₁(z)/ν + g₂(z)/ν² + g₃(z)/ν³ + g₄(z)/ν⁴
 *  @param freedom  ν, degrees of freedom [-]     @returns t [-]
 *  Range   ν ≥ 3, else DomainError out_of_range
 *  Error   0.15 % at ν = 3, less above
 *  Source  Abramowitz & Stegun, Handbook of Mathematical Functions (1964), 26.7.5
 *  Check   ν 3, 10, 30, 120 → 3.182, 2.228, 2.042, 1.980   tests/reference/test-run.reference.ts */
export function studentQuantile(freedom: number): number {
	requireWithin("numeric.freedom", freedom, 3, Number.POSITIVE_INFINITY);
	const z2 = Z * Z;
	const g1 = (Z * (z2 + 1)) / 4;
	const g2 = (Z * ((5 * z2 + 16) * z2 + 3)) / 96;
	const g3 = (Z * (((3 * z2 + 19) * z2 + 17) * z2 - 15)) / 384;
	const g4 = (Z * ((((79 * z2 + 776) * z2 + 1482) * z2 - 1920) * z2 - 945)) / 92_160;
	return Z + (g1 + (g2 + (g3 + g4 / freedom) / freedom) / freedom) / freedom;
}
