import { allowedError, KINDS, type Kind, type ReferenceRow, type ReferenceSet } from "./reference.ts";

/** How far some rows lie from their published values, all in one unit. */
export interface Errors {
	readonly count: number;
	readonly mean: number;
	readonly worst: number;
	readonly widest: number; // tolerance
	readonly used: number; // most of a tolerance used, 0–1
}

/** Errors of rows, in their unit or, relative, in per cent of the published value. */
export function errorsOf(rows: readonly ReferenceRow[], relative: boolean): Errors {
	const scale = (row: ReferenceRow) => (relative ? 100 / Math.abs(row.published) : 1);
	const found = rows.map((row) => Math.abs(row.computed() - row.published));
	const errors = rows.map((row, i) => found[i]! * scale(row));
	return {
		count: rows.length,
		mean: errors.reduce((sum, error) => sum + error, 0) / rows.length,
		worst: Math.max(...errors),
		widest: Math.max(...rows.map((row) => allowedError(row) * scale(row))),
		used: Math.max(...rows.map((row, i) => found[i]! / allowedError(row))),
	};
}

/** A figure of two digits, as the tables print it. Below a part in 10¹² it is the arithmetic that differs, from engine to engine. */
export function figure(value: number): string {
	if (value < 1e-12) return value === 0 ? "0" : "< 1e-12";
	return String(Number(value.toPrecision(2)));
}

/** How many rows of some sets are of each kind. */
export function countsByKind(sets: readonly ReferenceSet[]): Readonly<Record<Kind, number>> {
	const rows = sets.flatMap((set) => set.rows);
	return Object.fromEntries(
		KINDS.map((kind) => [kind, rows.filter((row) => row.kind === kind).length]),
	) as Record<Kind, number>;
}

/** One row of a Markdown table. */
export function tableRow(cells: readonly string[]): string {
	return `| ${cells.map((cell) => cell.replaceAll("|", "\\|")).join(" | ")} |`;
}

/** A name with a capital at its start. */
export function capital(text: string): string {
	return text.charAt(0).toUpperCase() + text.slice(1);
}
