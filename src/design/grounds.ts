import type { Provenance } from "../provenance.ts";

/** Why a value suits a plant that was described without it. */
export interface Grounds extends Provenance {
	readonly reason: string; // a fragment of a sentence that can be read without the value's name
}

/** What the trade usually does, without a source. */
export const practice = (reason: string): Grounds => ({ reason, basis: "commonPractice", confirmed: true });

/** What follows from other values of the description. */
export const derived = (reason: string): Grounds => ({ reason, basis: "derived", confirmed: true });

/** What a table or map says of the place or material. */
export const lookedUp = (reason: string): Grounds => ({ reason, basis: "lookedUp", confirmed: true });

/** What a standard, a regulation or a guideline sets. */
export const standard = (reason: string, source: string): Grounds => ({
	...{ reason, basis: "standard", source, confirmed: true },
});

/** What a textbook or a review gives. */
export const handbook = (reason: string, source: string): Grounds => ({
	...{ reason, basis: "handbook", source, confirmed: true },
});

/** What was measured and published. */
export const measured = (reason: string, source: string): Grounds => ({
	...{ reason, basis: "measured", source, confirmed: true },
});

/** The same grounds for a value that was written from memory. */
export const unconfirmed = (grounds: Grounds): Grounds => ({ ...grounds, confirmed: false });
