const MOST_STEPS = 8;

/** One evaluation of a fixed-point function: its value, the next guess, and any other result of the evaluation. */
export interface Pass {
	readonly next: number;
}

/** Fixed point x = next(x) by the secant method, for functions that depend only weakly on x.
 *  @param pass       undefined where the function is not defined     @param start  first guess; the second is next(start)
 *  @param tolerance  greatest difference of next(x) and x, in the unit of the variable
 *  @returns  the evaluation at the fixed point, or undefined where eight steps do not converge or the function is not finite;
 *            the caller then brackets the root */
export function secantFixedPoint<P extends Pass>(
	pass: (x: number) => P | undefined,
	start: number,
	tolerance: number,
): P | undefined {
	let x = start;
	let previous = Number.NaN;
	let previousExcess = Number.NaN;
	for (let i = 0; i < MOST_STEPS; i++) {
		const found = pass(x);
		if (found === undefined) return undefined;
		const excess = found.next - x;
		if (Math.abs(excess) <= tolerance) return found;
		const next = i === 0 ? found.next : x - (excess * (x - previous)) / (excess - previousExcess);
		if (!Number.isFinite(next)) return undefined;
		previous = x;
		previousExcess = excess;
		x = next;
	}
	return undefined;
}
