/** A straight line through points, by least squares. */
export interface Line {
	readonly mean: number;
	readonly slope: number;
	readonly error: number; // standard error of the slope
}

export function line(x: readonly number[], y: readonly number[]): Line {
	const count = x.length;
	const middle = x.reduce((sum, value) => sum + value, 0) / count;
	const mean = y.reduce((sum, value) => sum + value, 0) / count;
	const spread = x.reduce((sum, value) => sum + (value - middle) ** 2, 0);
	const slope = x.reduce((sum, value, i) => sum + (value - middle) * (y[i]! - mean), 0) / spread;
	const rest = y.reduce((sum, value, i) => sum + (value - mean - slope * (x[i]! - middle)) ** 2, 0);
	return { mean, slope, error: Math.sqrt(rest / (count - 2) / spread) };
}
