const MOST_STEPS = 8;

/** What a function that is to be mapped to itself makes of a guess: the next one, and whatever else was found on the way. */
export interface Pass {
	readonly next: number;
}

/** Fixed point x = next(x) by the secant method, for functions that hardly depend on x.
 *  @param pass       undefined where the function has no value     @param start  first guess; the second is next(start)
 *  @param tolerance  most that next(x) and x may differ, in the unit of the variable
 *  @returns  the pass whose `next` is the fixed point, or undefined where eight steps do not converge or the function is not finite: the
 *            caller then brackets the root */
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
