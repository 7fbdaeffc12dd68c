/** The middle of some figures. */
export function median(values: readonly number[]): number {
	const sorted = [...values].sort((a, b) => a - b);
	const middle = sorted.length >> 1;
	return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

/** The figure that a share of all does not exceed. @param share  0 to 1 */
export function percentile(values: readonly number[], share: number): number {
	const sorted = [...values].sort((a, b) => a - b);
	return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
}

/** Prints rows under a heading, each column as wide as it must be, the first to the left and the others to the right. */
export function table(heading: readonly string[], rows: readonly (readonly string[])[]): void {
	const all = [heading, ...rows];
	const widths = heading.map((_, column) => Math.max(...all.map((row) => row[column]!.length)));
	for (const row of all)
		console.log(
			row
				.map((cell, column) => (column === 0 ? cell.padEnd(widths[column]!) : cell.padStart(widths[column]!)))
				.join("  "),
		);
}

/** One thing that a run must show. */
export interface Bound {
	readonly name: string;
	readonly holds: boolean;
	readonly found: string;
}

/** Prints what was to be shown, and makes the run fail where it was not. */
export function judge(bounds: readonly Bound[]): void {
	console.log();
	for (const { name, holds, found } of bounds) console.log(`${holds ? "ok  " : "FAIL"} ${name}: ${found}`);
	if (bounds.some(({ holds }) => !holds)) process.exitCode = 1;
}
