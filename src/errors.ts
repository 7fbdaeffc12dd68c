/** Why the core refused to answer. A closed union: the HTTP edge maps each code to a status in one table. */
export type DomainCode = "out_of_range" | "contradictory" | "impossible" | "too_large" | "no_convergence";

/** The one error that the core throws on purpose. `details` is plain data, safe to show to a caller. */
export class DomainError extends Error {
	override readonly name = "DomainError";
	constructor(
		readonly code: DomainCode,
		message: string,
		readonly details: Readonly<Record<string, number | string>>,
	) {
		super(message);
	}
}

/** Throws `out_of_range` unless low ≤ value ≤ high; written positively, so that NaN is refused too. */
export function requireWithin(name: string, value: number, low: number, high: number): void {
	if (!(value >= low && value <= high))
		throw new DomainError("out_of_range", `${name} must lie within ${low} to ${high}`, {
			name,
			value,
			low,
			high,
		});
}
