import { bracketedRoot } from "./root.ts";

const MOST_ROUNDS = 6;

/** Point that a contracting function maps to itself, g(x) = x, by Steffensen's method: two evaluations, then a jump to the limit
 *  of their geometric series. A jump out of the bracket is rejected; where the rounds do not converge, Brent's method takes over.
 *  @param g          maps the bracket into itself     @param start  a guess, within the bracket
 *  @param low,high   bracket in either order     @param tolerance  greatest difference of two successive values of x [unit of x]
 *  @returns          x within the tolerance; for a slow contraction, within tolerance/(1 − contraction)
 *  Source  Steffensen, Skandinavisk Aktuarietidskrift 16 (1933) 64–72; the same extrapolation as in scipy */
export function fixedPoint(
	g: (x: number) => number,
	start: number,
	low: number,
	high: number,
	tolerance: number,
): number {
	const [least, most] = low <= high ? [low, high] : [high, low];
	let x = start;
	for (let round = 0; round < MOST_ROUNDS; round++) {
		const once = g(x);
		if (Math.abs(once - x) <= tolerance) return once;
		const twice = g(once);
		if (Math.abs(twice - once) <= tolerance) return twice;
		const jump = twice - (twice - once) ** 2 / (twice - 2 * once + x);
		x = jump >= least && jump <= most ? jump : twice;
	}
	return bracketedRoot((at) => g(at) - at, low, high, tolerance);
}
