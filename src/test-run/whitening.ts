import type { Column } from "./run.ts";

/** Weights that turn a trajectory into innovations of equal variance. */
export interface Whitening {
	readonly gains: Float64Array; // of the innovation on the level [N − 1]
	readonly scales: Float64Array; // √ of the variance of the innovation over that of a reading [N − 1]
	readonly logDeterminant: number; // Σ ln of those variances
}

/** Weights that make rows with a common drift independent: a reading is level + noise, and between readings
 *  the level drifts as a random walk. The first row determines the level and is not available for the fit.
 *  P⁻ = P + λ·Δt, f = P⁻ + 1, K = P⁻/f, P = K
 *  @param ratio  λ, variance of the drift per second over that of a reading [1/s]
 *  Source  local level model with diffuse start: Durbin & Koopman, Time Series Analysis by State Space Methods (2001), ch. 2 (from memory)
 *  Check   the covariance of its innovations, tests/unit/test-run/trajectory-fit.test.ts */
export function whitening(time: Column, ratio: number): Whitening {
	const rows = time.length - 1;
	const gains = new Float64Array(rows);
	const scales = new Float64Array(rows);
	let logDeterminant = 0;
	let variance = 1;
	for (let i = 0; i < rows; i++) {
		const before = variance + ratio * (time[i + 1]! - time[i]!);
		variance = before / (before + 1);
		gains[i] = variance;
		scales[i] = Math.sqrt(before + 1);
		logDeterminant += Math.log(before + 1);
	}
	return { gains, scales, logDeterminant };
}

/** Innovations of a column, each divided by its standard deviation [N − 1]. Linear in the column. */
export function innovationsOf(column: Column, { gains, scales }: Whitening): Float64Array {
	const innovations = new Float64Array(gains.length);
	let level = column[0]!;
	for (let i = 0; i < innovations.length; i++) {
		const innovation = column[i + 1]! - level;
		level += gains[i]! * innovation;
		innovations[i] = innovation / scales[i]!;
	}
	return innovations;
}
