/** Solution of a linear least-squares problem. */
export interface LeastSquares {
	readonly values: Float64Array; // [K]
	readonly inverse: readonly Float64Array[]; // (XᵀX)⁻¹ [K][K]; times the variance of a row it is the covariance
	readonly logDeterminant: number; // ln |XᵀX|
	readonly residualSum: number; // of squares
}

const SINGULAR = 1e-9; // [-] square of the part of a unit column that is independent of the others

/** Values that minimise the squared difference between Σ valueₖ · columnₖ and the observations; undefined for dependent columns.
 *  Normal equations by Cholesky, columns scaled to unit length first. Intended for a handful of columns.
 *  @param columns  [K][N], K ≥ 1     @param observed  [N] */
export function leastSquares(
	columns: readonly Float64Array[],
	observed: Float64Array,
): LeastSquares | undefined {
	const lengths = columns.map((column) => Math.sqrt(product(column, column)));
	if (lengths.some((length) => !(length > 0))) return undefined;
	const gram = columns.map((a, i) =>
		columns.map((b, j) => (i === j ? 1 : product(a, b) / (lengths[i]! * lengths[j]!))),
	);
	const factor = cholesky(gram);
	if (!factor) return undefined;
	const inverse = columns.map((_, k) => {
		const unit = new Float64Array(columns.length);
		unit[k] = 1 / lengths[k]!;
		return solved(factor, unit).map((value, i) => value / lengths[i]!);
	});
	const right = Float64Array.from(columns, (column, k) => product(column, observed) / lengths[k]!);
	const values = solved(factor, right).map((value, k) => value / lengths[k]!);
	let logDeterminant = 0;
	for (let k = 0; k < columns.length; k++) logDeterminant += 2 * Math.log(factor[k]![k]! * lengths[k]!);
	return { values, inverse, logDeterminant, residualSum: residualSum(columns, values, observed) };
}

function product(a: Float64Array, b: Float64Array): number {
	let sum = 0;
	for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
	return sum;
}

function residualSum(columns: readonly Float64Array[], values: Float64Array, observed: Float64Array): number {
	let sum = 0;
	for (let i = 0; i < observed.length; i++) {
		let residual = observed[i]!;
		for (let k = 0; k < columns.length; k++) residual -= values[k]! * columns[k]![i]!;
		sum += residual * residual;
	}
	return sum;
}

/** Lower triangle L with L·Lᵀ = matrix; undefined where the matrix is singular. */
function cholesky(matrix: readonly (readonly number[])[]): Float64Array[] | undefined {
	const factor = matrix.map((row) => new Float64Array(row.length));
	for (let i = 0; i < matrix.length; i++)
		for (let j = 0; j <= i; j++) {
			let remainder = matrix[i]![j]!;
			for (let k = 0; k < j; k++) remainder -= factor[i]![k]! * factor[j]![k]!;
			if (i === j && !(remainder > SINGULAR)) return undefined;
			factor[i]![j] = i === j ? Math.sqrt(remainder) : remainder / factor[j]![j]!;
		}
	return factor;
}

function solved(factor: readonly Float64Array[], right: Float64Array): Float64Array {
	const size = right.length;
	const x = right.slice();
	for (let i = 0; i < size; i++) {
		for (let k = 0; k < i; k++) x[i]! -= factor[i]![k]! * x[k]!;
		x[i]! /= factor[i]![i]!;
	}
	for (let i = size - 1; i >= 0; i--) {
		for (let k = i + 1; k < size; k++) x[i]! -= factor[k]![i]! * x[k]!;
		x[i]! /= factor[i]![i]!;
	}
	return x;
}
