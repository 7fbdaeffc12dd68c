import { normalScore } from "./normal-score.ts";
import { uniformStream } from "./random.ts";

/** Seeded Latin hypercube of normal scores: every variable is drawn once from each of as many equally likely slices as there are
 *  rows, the slices of different variables paired at random.
 *  @returns  rows of one score a variable
 *  Source  McKay, Beckman & Conover, Technometrics 21 (1979) 239–245 */
export function latinHypercube(seed: number, rows: number, variables: number): readonly Float64Array[] {
	const uniform = uniformStream(seed);
	const scores = Array.from({ length: rows }, () => new Float64Array(variables));
	for (let variable = 0; variable < variables; variable++) {
		const slices = shuffled(rows, uniform);
		for (let row = 0; row < rows; row++) {
			const within = Math.max(uniform(), Number.EPSILON); // the edge of the first slice is no probability
			scores[row]![variable] = normalScore((slices[row]! + within) / rows);
		}
	}
	return scores;
}

/** The numbers 0 to count − 1 in random order (Fisher & Yates). */
function shuffled(count: number, uniform: () => number): Uint32Array {
	const order = Uint32Array.from({ length: count }, (_, i) => i);
	for (let i = count - 1; i > 0; i--) {
		const j = Math.floor(uniform() * (i + 1));
		[order[i], order[j]] = [order[j]!, order[i]!];
	}
	return order;
}
