import type { Column } from "./run.ts";

/** What each row of a trajectory adds to the rows before it: innovations of equal variance, and how much each was scaled by. */
export interface Whitening {
	readonly gains: Float64Array; // of the row's news on the level [N − 1]
	readonly scales: Float64Array; // √ of the innovation's variance over the reading's [N − 1]
	readonly logDeterminant: number; // Σ ln of those variances
}

/** Weights that make rows independent which share a slowly straying error: a reading is level + noise, and between readings
 *  the level strays as a random walk. The first row sets the level and is used up by it.
 *  P⁻ = P + λ·Δt, f = P⁻ + 1, K = P⁻/f, P = K
 *  @param ratio  λ, variance that the level gains per second over that of a reading [1/s]
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

/** A column's innovations, each over its standard deviation [N − 1]. Linear in the column. */
export function whitened(column: Column, { gains, scales }: Whitening): Float64Array {
	const news = new Float64Array(gains.length);
	let level = column[0]!;
	for (let i = 0; i < news.length; i++) {
		const innovation = column[i + 1]! - level;
		level += gains[i]! * innovation;
		news[i] = innovation / scales[i]!;
	}
	return news;
}
