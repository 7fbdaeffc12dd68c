import { DomainError } from "../errors.ts";

/** Effectiveness of an exchanger whose other side has a uniform temperature: ε = 1 − e^(−NTU).
 *  @param ntu  UA over the capacity rate of the flowing side [-]     @returns heat over its greatest possible value, 0–1
 *  Source  Kays & London, Compact Heat Exchangers, 3e, McGraw-Hill 1984, ch. 2; exact
 *  Check   tests/reference/heat.reference.ts */
export function effectivenessUniform(ntu: number): number {
	return -Math.expm1(-ntu);
}

/** Effectiveness of a counterflow exchanger: ε = (1 − E)/(1 − C·E), E = e^(−NTU(1−C)); NTU/(1 + NTU) at C = 1.
 *  @param ntu    UA over the smaller capacity rate [-]     @param ratio  smaller over larger capacity rate, 0–1
 *  @returns      heat over its greatest possible value, 0–1
 *  Range   0 ≤ ratio ≤ 1 and ntu ≥ 0, else DomainError out_of_range
 *  Source  Kays & London, Compact Heat Exchangers, 3e, McGraw-Hill 1984, ch. 2; exact
 *  Check   tests/reference/heat.reference.ts */
export function effectivenessCounterflow(ntu: number, ratio: number): number {
	if (!(ratio >= 0 && ratio <= 1 && ntu >= 0))
		throw new DomainError(
			"out_of_range",
			"heat.exchanger",
			"counterflow needs a capacity ratio within 0 to 1 and NTU ≥ 0",
			{
				ntu,
				ratio,
			},
		);
	const spare = 1 - ratio;
	if (spare === 0) return ntu / (1 + ntu);
	const gained = -Math.expm1(-ntu * spare); // 1 − E without cancellation near C = 1
	return gained / (spare + ratio * gained);
}

/** Logarithmic mean of the temperature differences at both ends of an exchanger, (a − b)/ln(a/b).
 *  @param a,b  differences at the two ends, of the same sign [K]     @returns mean difference [K]; a where both are equal
 *  Range   a·b ≥ 0, else DomainError impossible: heat would flow from cold to hot
 *  Source  Incropera & DeWitt 6e, eq. 11.15; exact for constant capacity rates and coefficient */
export function logMeanDifference(a: number, b: number): number {
	if (!(a * b >= 0))
		throw new DomainError("impossible", "heat.exchanger", "the temperatures cross inside the exchanger", {
			a,
			b,
		});
	if (a === 0 || b === 0) return 0;
	const step = (a - b) / b;
	return step === 0 ? a : (b * step) / Math.log1p(step);
}
