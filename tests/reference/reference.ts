/** Where an expected value comes from, best witness first. */
export type Kind =
	| "print" // transcribed from a published text, or from a public copy that quotes it
	| "library" // computed by an independent library, named with its version where known
	| "formula" // a published formula or an exact law, evaluated by us apart from the code under test
	| "memory"; // the value, or the formula behind it, was written from memory and not confirmed

export const KINDS = ["print", "library", "formula", "memory"] as const satisfies readonly Kind[];

/** What a tolerance rests on. */
export type Basis =
	| "digits" // half of the last digit printed, of the value or of its inputs
	| "source" // the uncertainty or a difference that a published text states
	| "claim" // what the model's own documentation allows itself; wider than any error seen
	| "numerics" // step or quadrature of one of the two computations
	| "practice"; // stated wide; common practice, no source

/** How far an answer may lie from its published value, and why that far. */
export interface Tolerance {
	readonly absolute?: number; // in the row's unit
	readonly relative?: number; // of the published value
	readonly basis: Basis;
	readonly reason: string;
}

/** One published value and the project's own answer to the same question. */
export interface ReferenceRow {
	readonly name: string;
	readonly published: number;
	readonly computed: () => number;
	readonly tolerance: Tolerance;
	readonly source: string; // author, title, year, table or example; of kind "formula": of the formula alone
	readonly kind: Kind;
}

/** Published values of one quantity in one unit. Only a check counts as one:
 *  a sanity check compares two models or two definitions, a fit shows the data that the model was made from. */
export type ReferenceSet = {
	readonly quantity: string;
	readonly unit: string; // "-" for none
	readonly rows: readonly ReferenceRow[];
} & ({ readonly role: "check" } | { readonly role: "sanity" | "fit"; readonly why: string });

/** How far the row's answer may lie from the published value, in the row's unit: the wider of its two tolerances. */
export function allowedError(row: ReferenceRow): number {
	return Math.max(row.tolerance.absolute ?? 0, (row.tolerance.relative ?? 0) * Math.abs(row.published));
}
