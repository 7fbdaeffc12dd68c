import type { Column } from "./run.ts";

/** Integral of a rate over time from the first row to each row [N], by trapezoids, over selected spans.
 *  @param rate    at a row
 *  @param counts  whether the span from row i to i + 1 is included [N − 1] */
export function cumulativeIntegral(
	time: Column,
	rate: (row: number) => number,
	counts: ArrayLike<boolean>,
): Float64Array {
	const sums = new Float64Array(time.length);
	for (let i = 1; i < time.length; i++)
		sums[i] = sums[i - 1]! + (counts[i - 1] ? ((rate(i - 1) + rate(i)) / 2) * (time[i]! - time[i - 1]!) : 0);
	return sums;
}

/** Mean of a rate between two rows, by trapezoids. */
export function meanOver(time: Column, rate: (row: number) => number, from: number, to: number): number {
	let sum = 0;
	for (let i = from; i < to; i++) sum += ((rate(i) + rate(i + 1)) / 2) * (time[i + 1]! - time[i]!);
	return sum / (time[to]! - time[from]!);
}
