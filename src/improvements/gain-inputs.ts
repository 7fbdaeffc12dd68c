import { latinHypercube } from "../numeric/latin-hypercube.ts";
import type { DaySpreads } from "../uncertainty/day-spreads.ts";
import { SEED } from "../uncertainty/range.ts";
import type { ImprovementId } from "./steps.ts";

/** Inputs that an improvement puts new ones in the place of: how far the old mirror is off says nothing of the new one, nor one way
 *  of washing of another. Everything else errs alike with the improvement and without. */
const RENEWED = [
	["reflectance", "reflectance"],
	["cleaning", "cleanliness"],
] as const satisfies readonly (readonly [ImprovementId, keyof DaySpreads])[];

/** The input that an improvement renews. */
export function renewedBy(id: ImprovementId): keyof DaySpreads | undefined {
	return RENEWED.find(([improvement]) => improvement === id)?.[1];
}

/** How many scores a plant and all its improvements take: one of each input, and one of each that is renewed. */
export function scoreCount(inputs: readonly unknown[]): number {
	return inputs.length + RENEWED.length;
}

/** Which score each input of the improved plant goes by. */
export function columnsOf(
	id: ImprovementId,
	inputs: readonly { readonly name: string }[],
): readonly number[] {
	const place = RENEWED.findIndex(([improvement]) => improvement === id);
	return inputs.map(({ name }, i) => (RENEWED[place]?.[1] === name ? inputs.length + place : i));
}

/** The scores of a sample, with those of what is renewed behind them. */
export function withRenewed(scores: readonly Float64Array[]): readonly Float64Array[] {
	const renewed = latinHypercube(SEED + 1, scores.length, RENEWED.length);
	return scores.map((row, i) => Float64Array.from([...row, ...renewed[i]!]));
}
