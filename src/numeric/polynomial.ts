/** Value of c₀ + c₁x + c₂x² + … by Horner's scheme.
 *  @param coefficients [N]  lowest power first     @param x  argument */
export function polynomial(coefficients: readonly number[], x: number): number {
	let sum = 0;
	for (let i = coefficients.length - 1; i >= 0; i--) sum = sum * x + coefficients[i]!;
	return sum;
}

/** Coefficients of the derivative of c₀ + c₁x + c₂x² + …, lowest power first. */
export function derivative(coefficients: readonly number[]): readonly number[] {
	return coefficients.slice(1).map((c, i) => c * (i + 1));
}
