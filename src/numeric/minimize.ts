const GOLDEN = (3 - Math.sqrt(5)) / 2;

/** Position of the maximum of a unimodal function between two bounds (golden-section search).
 *  @param f          function of one variable
 *  @param low,high   bounds of the search
 *  @param tolerance  absolute width of the last bracket, in the unit of the variable
 *  @returns          the best x evaluated, bounds included; for several maxima, one of them
 *  Source  Kiefer, Proc. Am. Math. Soc. 4 (1953) 502–506 */
export function boundedMaximum(
	f: (x: number) => number,
	low: number,
	high: number,
	tolerance: number,
): number {
	const steps = Math.max(1, Math.ceil(Math.log(tolerance / (high - low)) / Math.log(1 - GOLDEN)));
	let a = low;
	let b = high;
	let x1 = a + GOLDEN * (b - a);
	let x2 = b - GOLDEN * (b - a);
	let f1 = f(x1);
	let f2 = f(x2);
	for (let i = 0; i < steps; i++) {
		if (f1 >= f2) {
			[b, x2, f2] = [x2, x1, f1];
			x1 = a + GOLDEN * (b - a);
			f1 = f(x1);
		} else {
			[a, x1, f1] = [x1, x2, f2];
			x2 = b - GOLDEN * (b - a);
			f2 = f(x2);
		}
	}
	const inner = f1 >= f2 ? x1 : x2;
	const best = Math.max(f1, f2);
	if (f(low) > best) return low;
	return f(high) > best ? high : inner;
}
