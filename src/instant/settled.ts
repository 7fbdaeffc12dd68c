const MOST_STEPS = 8;

/** Fixed point x = f(x) by the secant method, for functions that hardly depend on x.
 *  @param f          function of one variable     @param start  first guess; the second is f(start)
 *  @param tolerance  most that f(x) and x may differ, in the unit of the variable
 *  @returns  x, or undefined where eight steps do not settle it or f is not finite: the caller then brackets the root */
export function settled(f: (x: number) => number, start: number, tolerance: number): number | undefined {
	let x = start;
	let previous = Number.NaN;
	let previousExcess = Number.NaN;
	for (let i = 0; i < MOST_STEPS; i++) {
		const value = f(x);
		const excess = value - x;
		if (Math.abs(excess) <= tolerance) return value;
		const next = i === 0 ? value : x - (excess * (x - previous)) / (excess - previousExcess);
		if (!Number.isFinite(next)) return undefined;
		previous = x;
		previousExcess = excess;
		x = next;
	}
	return undefined;
}
