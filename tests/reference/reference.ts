/** How far an answer may lie from its published value, and why that far. */
export interface Tolerance {
	readonly absolute?: number; // in the row's unit
	readonly relative?: number; // of the published value
	readonly reason: string;
}

/** One published value and the project's own answer to the same question. */
export interface ReferenceRow {
	readonly name: string;
	readonly published: number;
	readonly computed: () => number;
	readonly tolerance: Tolerance;
	readonly source: string; // author, title, year, table or example
	readonly fromMemory: boolean; // the published value was written down from memory
}

/** Published values of one quantity: a line of the accuracy table in the README. */
export interface ReferenceSet {
	readonly quantity: string;
	readonly unit: string; // "-" for none
	readonly rows: readonly ReferenceRow[];
}

/** How far the row's answer may lie from the published value, in the row's unit: the wider of its two tolerances. */
export function allowedError(row: ReferenceRow): number {
	return Math.max(row.tolerance.absolute ?? 0, (row.tolerance.relative ?? 0) * Math.abs(row.published));
}
