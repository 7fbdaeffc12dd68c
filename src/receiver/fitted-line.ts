/** The straight line that comes nearest to a receiver's heat: useful = zeroLossEfficiency·P − lossCoefficient·(T − T_air). */
export interface FittedLine {
	readonly zeroLossEfficiency: number; // of the power P, where fluid and air are alike [-]
	readonly lossCoefficient: number; // [W/K]
	readonly worstDeviation: number; // of efficiency from the line, among the points it was fitted to [-]
}

/** Least squares through points of one wind and tilt.
 *  @param differences [n]  fluid over air [K]     @param useful [n]  heat to the fluid [W]
 *  @param power            what efficiency refers to, above 0 [W]
 *  @returns  undefined where fewer than two differences are there to draw a line through
 *  Error   true losses bend upward with temperature, by radiation: see worstDeviation
 *  Source  ISO 9806:2017 draws the same line for collectors, with a quadratic term besides, as (EU) 812/2013, Annex I, quotes it */
export function fittedLine(
	differences: readonly number[],
	useful: readonly number[],
	power: number,
): FittedLine | undefined {
	const count = differences.length;
	const meanX = differences.reduce((sum, x) => sum + x, 0) / count;
	const meanY = useful.reduce((sum, y) => sum + y, 0) / count;
	let spread = 0;
	let together = 0;
	for (let i = 0; i < count; i++) {
		spread += (differences[i]! - meanX) ** 2;
		together += (differences[i]! - meanX) * (useful[i]! - meanY);
	}
	if (!(spread > 0 && power > 0)) return undefined;
	const slope = together / spread;
	const atZero = meanY - slope * meanX;
	const worst = useful.reduce(
		(most, y, i) => Math.max(most, Math.abs(y - atZero - slope * differences[i]!)),
		0,
	);
	return { zeroLossEfficiency: atZero / power, lossCoefficient: -slope, worstDeviation: worst / power };
}
