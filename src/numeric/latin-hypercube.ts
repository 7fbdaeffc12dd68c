import { normalScore } from "./normal-score.ts";
import { uniformStream } from "./random.ts";

/** Seeded Latin hypercube of normal scores. Each variable is divided into as many equally likely slices as there are rows and
 *  drawn once from each; the slices of different variables are paired at random.
 *  @returns  rows with one score per variable
 *  Source  McKay, Beckman & Conover, Technometrics 21 (1979) 239–245 */
export function latinHypercube(seed: number, rows: number, variables: number): readonly Float64Array[] {
	const uniform = uniformStream(seed);
	const scores = Array.from({ length: rows }, () => new Float64Array(variables));
	for (let variable = 0; variable < variables; variable++) {
		const slices = shuffled(rows, uniform);
		for (let row = 0; row < rows; row++) {
			const within = Math.max(uniform(), Number.EPSILON); // 0, the edge of the first slice, has no score
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
