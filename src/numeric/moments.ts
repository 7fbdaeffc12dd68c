import { normalScore } from "./normal-score.ts";

/** Effect of the score z of one input on an answer: first·z + second·z². */
export interface Effect {
	readonly first: number;
	readonly second: number;
}

/** Distribution of an answer around its central value: a sum of effects with independent normal scores. */
export interface Spread {
	readonly mean: number;
	readonly deviation: number;
	readonly skewness: number;
	readonly excess: number; // excess kurtosis
	readonly nonlinear: number; // share of the variance from second-order effects
}

/** Mean, variance, skewness and kurtosis by the cumulants of first·z + second·z², which are exact and additive.
 *  Neglected: interaction of two inputs. */
export function spreadOf(central: number, effects: readonly Effect[]): Spread {
	let mean = central;
	let straight = 0;
	let curved = 0;
	let third = 0;
	let fourth = 0;
	for (const { first, second } of effects) {
		const a = first * first;
		const b = second * second;
		mean += second;
		straight += a;
		curved += 2 * b;
		third += second * (6 * a + 8 * b);
		fourth += 48 * b * (a + b);
	}
	const variance = straight + curved;
	const deviation = Math.sqrt(variance);
	if (variance === 0) return { mean, deviation, skewness: 0, excess: 0, nonlinear: 0 };
	return {
		mean,
		deviation,
		skewness: third / (variance * deviation),
		excess: fourth / (variance * variance),
		nonlinear: curved / variance,
	};
}

/** The same effects on the logarithm of an answer over its central value, where multiplying effects become additive. Undefined where
 *  one input alone brings the answer close to zero or beyond. */
export function logarithmicEffects(
	central: number,
	effects: readonly Effect[],
): readonly Effect[] | undefined {
	const made: Effect[] = [];
	for (const { first, second } of effects) {
		const up = 1 + (second + first) / central;
		const down = 1 + (second - first) / central;
		if (!(Math.min(up, down) > LEAST_LEFT)) return undefined;
		made.push({ first: Math.log(up / down) / 2, second: Math.log(up * down) / 2 });
	}
	return made;
}

const LEAST_LEFT = 0.7; // [-] of the central value, at one standard deviation of one input; chosen: closer to zero, effects add rather than multiply

/** Value that the answer does not exceed with a given probability (Cornish & Fisher).
 *  x = mean + deviation·[z + γ(z² − 1)/6 + κ(z³ − 3z)/24 − γ²(2z³ − 5z)/36]
 *  Range   skewness up to about 1
 *  Source  Cornish & Fisher, Revue de l'Institut International de Statistique 5 (1937) 307–320, as implemented in R's FactorAnalytics
 *  Check   gamma distribution, tests/unit/numeric/moments.test.ts */
export function quantile({ mean, deviation, skewness, excess }: Spread, probability: number): number {
	const z = normalScore(probability);
	const z2 = z * z;
	return (
		mean +
		deviation *
			(z +
				(skewness * (z2 - 1)) / 6 +
				(excess * z * (z2 - 3)) / 24 -
				(skewness * skewness * z * (2 * z2 - 5)) / 36)
	);
}
