import { latinHypercube } from "../numeric/latin-hypercube.ts";
import type { DaySpreads } from "../uncertainty/day-spreads.ts";
import { SEED } from "../uncertainty/range.ts";
import type { ImprovementId } from "./steps.ts";

/** Inputs that an improvement replaces: the deviation of the old mirror is independent of that of the new one, and so is one way
 *  of washing of another. All other inputs deviate equally with and without the improvement. */
const RENEWED = [
	["reflectance", "reflectance"],
	["cleaning", "cleanliness"],
] as const satisfies readonly (readonly [ImprovementId, keyof DaySpreads])[];

/** The input that an improvement replaces. */
export function renewedBy(id: ImprovementId): keyof DaySpreads | undefined {
	return RENEWED.find(([improvement]) => improvement === id)?.[1];
}

/** Number of scores of a plant and all its improvements: one per input, and one per replaced input. */
export function scoreCount(inputs: readonly unknown[]): number {
	return inputs.length + RENEWED.length;
}

/** Index of the score of each input of the improved plant. */
export function columnsOf(
	id: ImprovementId,
	inputs: readonly { readonly name: string }[],
): readonly number[] {
	const place = RENEWED.findIndex(([improvement]) => improvement === id);
	return inputs.map(({ name }, i) => (RENEWED[place]?.[1] === name ? inputs.length + place : i));
}

/** The scores of a sample, followed by those of replaced inputs. */
export function withRenewed(scores: readonly Float64Array[]): readonly Float64Array[] {
	const renewed = latinHypercube(SEED + 1, scores.length, RENEWED.length);
	return scores.map((row, i) => Float64Array.from([...row, ...renewed[i]!]));
}
