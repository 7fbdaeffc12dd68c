/** What a value rests on. */
export type Basis = "standard" | "handbook" | "measured" | "commonPractice" | "derived" | "lookedUp";

/** Where a value comes from. */
export interface Provenance {
	readonly basis: Basis;
	readonly source?: string; // citation; common practice has none
	readonly confirmed: boolean; // false where the value was not yet compared with its source
}

/** Provenance of what the trade usually does, without a source. */
export const COMMON_PRACTICE = { basis: "commonPractice", confirmed: true } as const satisfies Provenance;
