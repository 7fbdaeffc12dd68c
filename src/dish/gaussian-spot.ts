const squaredCosines = (angles: number): Float64Array =>
	Float64Array.from({ length: angles }, (_, i) => Math.cos(((i + 0.5) * Math.PI) / (2 * angles)) ** 2);

// Angles of the trapezoid rule over a quarter turn. Its error falls as exp(−4·angles·asinh √(b²/(a² − b²))): the rounder the
// spot, the fewer are needed.
const ROUND = squaredCosines(4); // to a² = 2b²
const OVAL = squaredCosines(8); // to a² = 6b²
const LONG = squaredCosines(24);

/** Share of a two-dimensional Gaussian spot within a circle about its centre.
 *  With x = a·s·cos t and y = b·s·sin t the radial integral has a closed form:
 *  P = 1 − (1/2π)·∫ exp[−r²/(2·(a²cos²t + b²sin²t))] dt over a full turn,
 *  and the trapezoid rule over the periodic integrand converges faster than any power of the number of points.
 *  @param varianceA,varianceB  a², b² along the spot's own axes [m²], not both 0
 *  @param radius               r of the circle [m], may be infinite      @returns P, 0 to 1 [-]
 *  Error   round-off for a = b; 2e-7 for a up to 7b
 *  Source  elementary; for a = b it is 1 − exp(−r²/2a²) */
export function spotShareWithin(varianceA: number, varianceB: number, radius: number): number {
	const half = (radius * radius) / 2;
	const difference = varianceA - varianceB;
	const longer = Math.max(varianceA, varianceB);
	const shorter = Math.min(varianceA, varianceB);
	const squares = longer <= 2 * shorter ? ROUND : longer <= 6 * shorter ? OVAL : LONG;
	let outside = 0;
	for (let i = 0; i < squares.length; i++)
		outside += Math.exp(-half / (varianceB + difference * squares[i]!));
	return 1 - outside / squares.length;
}
