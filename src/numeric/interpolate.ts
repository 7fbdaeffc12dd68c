/** Value at x of a piecewise linear function through the points of a table.
 *  @param xs [N]  abscissae, strictly increasing     @param ys [N]  ordinates
 *  @returns  y at x; beyond either end the value at that end (the caller checks coverage) */
export function linearInterpolation(xs: ArrayLike<number>, ys: ArrayLike<number>, x: number): number {
	const last = xs.length - 1;
	if (!(x > xs[0]!)) return ys[0]!;
	if (!(x < xs[last]!)) return ys[last]!;
	let low = 0;
	let high = last;
	while (high - low > 1) {
		const middle = (low + high) >> 1;
		if (xs[middle]! <= x) low = middle;
		else high = middle;
	}
	const share = (x - xs[low]!) / (xs[high]! - xs[low]!);
	return ys[low]! + share * (ys[high]! - ys[low]!);
}
