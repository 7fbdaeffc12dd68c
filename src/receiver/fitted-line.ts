/** Straight line fitted to the useful heat of a receiver: useful = zeroLossEfficiency·P − lossCoefficient·(T − T_air). */
export interface FittedLine {
	readonly zeroLossEfficiency: number; // of the power P, for equal temperatures of fluid and air [-]
	readonly lossCoefficient: number; // [W/K]
	readonly worstDeviation: number; // greatest deviation of efficiency from the line among the fitted points [-]
}

/** Least-squares line through points of the same wind and tilt.
 *  @param differences [n]  temperature of the fluid above the air [K]     @param useful [n]  heat to the fluid [W]
 *  @param power            reference of the efficiency, above 0 [W]
 *  @returns  undefined for fewer than two different temperatures
 *  Error   radiation makes true losses increase faster than linearly: see worstDeviation
 *  Source  ISO 9806:2017 uses the same line for collectors, with an additional quadratic term, as quoted in (EU) 812/2013, Annex I */
export function fittedLine(
	differences: readonly number[],
	useful: readonly number[],
	power: number,
): FittedLine | undefined {
	const count = differences.length;
	const meanX = differences.reduce((sum, x) => sum + x, 0) / count;
	const meanY = useful.reduce((sum, y) => sum + y, 0) / count;
	let spread = 0;
	let covariance = 0;
	for (let i = 0; i < count; i++) {
		spread += (differences[i]! - meanX) ** 2;
		covariance += (differences[i]! - meanX) * (useful[i]! - meanY);
	}
	if (!(spread > 0 && power > 0)) return undefined;
	const slope = covariance / spread;
	const atZero = meanY - slope * meanX;
	const worst = useful.reduce(
		(most, y, i) => Math.max(most, Math.abs(y - atZero - slope * differences[i]!)),
		0,
	);
	return { zeroLossEfficiency: atZero / power, lossCoefficient: -slope, worstDeviation: worst / power };
}
