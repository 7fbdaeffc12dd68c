import { bracketedRoot } from "./root.ts";

const MOST_ROUNDS = 6;

/** Point that a contracting function maps to itself, g(x) = x, by Steffensen's method: two passes, and a leap to where
 *  their geometric series ends. A leap out of the bracket is not taken; where the rounds do not settle, Brent's method ends it.
 *  @param g          maps the bracket into itself     @param start  a guess, within the bracket
 *  @param low,high   bracket in either order     @param tolerance  of x: two passes agree so closely [unit of x]
 *  @returns          x within the tolerance, times 1/(1 − contraction) for what contracts slowly
 *  Source  Steffensen, Skandinavisk Aktuarietidskrift 16 (1933) 64–72; the same leap as in scipy */
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
		const leap = twice - (twice - once) ** 2 / (twice - 2 * once + x);
		x = leap >= least && leap <= most ? leap : twice;
	}
	return bracketedRoot((at) => g(at) - at, low, high, tolerance);
}
