const ANGLES = 24; // of the trapezoid rule over a quarter turn; with them the whole intercept is good to 1e-4

const SQUARED_COSINE = Float64Array.from(
	{ length: ANGLES },
	(_, i) => Math.cos(((i + 0.5) * Math.PI) / (2 * ANGLES)) ** 2,
);

/** Share of a two-dimensional Gaussian spot that falls within a circle about its middle.
 *  With x = a·s·cos t and y = b·s·sin t the radial integral is closed:
 *  P = 1 − (1/2π)·∫ exp[−r²/(2·(a²cos²t + b²sin²t))] dt over a whole turn,
 *  and the trapezoid rule over the periodic rest converges faster than any power of the number of points.
 *  @param varianceA,varianceB  a², b² along the spot's own axes [m²], not both 0
 *  @param radius               r of the circle [m], may be infinite      @returns P, 0 to 1 [-]
 *  Error   round-off for a = b; below 1e-4 for a/b up to 7
 *  Source  elementary; for a = b it is 1 − exp(−r²/2a²) */
export function spotShareWithin(varianceA: number, varianceB: number, radius: number): number {
	const half = (radius * radius) / 2;
	const difference = varianceA - varianceB;
	let outside = 0;
	for (let i = 0; i < ANGLES; i++) outside += Math.exp(-half / (varianceB + difference * SQUARED_COSINE[i]!));
	return 1 - outside / ANGLES;
}
