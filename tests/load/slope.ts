/** A straight line through points, by least squares. */
export interface Line {
	readonly mean: number;
	readonly slope: number;
	readonly error: number; // standard error of the slope
}

export function line(x: readonly number[], y: readonly number[]): Line {
	return leastSquares(x, y, 2);
}

/** How y goes with x where z stays the same: the line through what z explains of neither (Frisch and Waugh). */
export function lineBeside(x: readonly number[], y: readonly number[], z: readonly number[]): Line {
	return { ...leastSquares(unexplained(z, x), unexplained(z, y), 3), mean: mean(y) };
}

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

function unexplained(x: readonly number[], y: readonly number[]): readonly number[] {
	const { slope } = line(x, y);
	const [middle, height] = [mean(x), mean(y)];
	return y.map((value, i) => value - height - slope * (x[i]! - middle));
}

function leastSquares(x: readonly number[], y: readonly number[], parameters: number): Line {
	const [middle, height] = [mean(x), mean(y)];
	const spread = x.reduce((sum, value) => sum + (value - middle) ** 2, 0);
	const slope = x.reduce((sum, value, i) => sum + (value - middle) * (y[i]! - height), 0) / spread;
	const rest = y.reduce((sum, value, i) => sum + (value - height - slope * (x[i]! - middle)) ** 2, 0);
	return { mean: height, slope, error: Math.sqrt(rest / (x.length - parameters) / spread) };
}
