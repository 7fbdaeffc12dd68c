import { DomainError } from "../errors.ts";

const MOST_ITERATIONS = 200;

/** Root of a continuous function between two points of opposite sign (Brent's method).
 *  @param f          function of one variable
 *  @param low,high   bracket; f must have opposite signs at its ends, else DomainError no_convergence
 *  @param tolerance  absolute width of the last bracket, in the unit of the variable
 *  @returns          x with a sign change of f within ± tolerance
 *  Source  Brent, Algorithms for Minimization without Derivatives, Prentice-Hall 1973, ch. 4 */
export function bracketedRoot(
	f: (x: number) => number,
	low: number,
	high: number,
	tolerance: number,
): number {
	let a = low;
	let b = high;
	let fa = f(a);
	let fb = f(b);
	if (fa === 0) return a;
	if (fb === 0) return b;
	if (!(fa * fb < 0))
		throw new DomainError(
			"no_convergence",
			"numeric.root",
			"the function has the same sign at both ends of the bracket",
			{
				low,
				high,
				atLow: fa,
				atHigh: fb,
			},
		);
	let c = a;
	let fc = fa;
	let step = b - a;
	let previous = step;
	for (let i = 0; i < MOST_ITERATIONS; i++) {
		if (Math.abs(fc) < Math.abs(fb)) {
			[a, b, c] = [b, c, b];
			[fa, fb, fc] = [fb, fc, fb];
		}
		const close = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2;
		const half = (c - b) / 2;
		if (Math.abs(half) <= close || fb === 0) return b;
		if (Math.abs(previous) >= close && Math.abs(fa) > Math.abs(fb)) {
			const s = fb / fa;
			const q0 = fa / fc;
			const r = fb / fc;
			let p = a === c ? 2 * half * s : s * (2 * half * q0 * (q0 - r) - (b - a) * (r - 1));
			let q = a === c ? 1 - s : (q0 - 1) * (r - 1) * (s - 1);
			if (p > 0) q = -q;
			p = Math.abs(p);
			if (2 * p < Math.min(3 * half * q - Math.abs(close * q), Math.abs(previous * q))) {
				previous = step;
				step = p / q;
			} else {
				step = half;
				previous = half;
			}
		} else {
			step = half;
			previous = half;
		}
		a = b;
		fa = fb;
		b += Math.abs(step) > close ? step : half > 0 ? close : -close;
		fb = f(b);
		if (fb > 0 === fc > 0) {
			c = a;
			fc = fa;
			step = b - a;
			previous = step;
		}
	}
	throw new DomainError("no_convergence", "numeric.root", "no root found within the iteration limit", {
		low,
		high,
		residual: fb,
	});
}
