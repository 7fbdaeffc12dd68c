import { normalScore } from "./normal-score.ts";

/** What a score z of one input does to an answer: first·z + second·z². */
export interface Bend {
	readonly first: number;
	readonly second: number;
}

/** An answer about its central value, as a sum of bends with independent normal scores. */
export interface Spread {
	readonly mean: number;
	readonly deviation: number;
	readonly skewness: number;
	readonly excess: number; // of the kurtosis
	readonly bent: number; // share of the variance that is not of first order
}

/** Mean, variance, skewness and kurtosis by the cumulants of first·z + second·z², which are exact and add up.
 *  Left out: what two inputs do together beyond the sum of what each does alone. */
export function spreadOf(central: number, bends: readonly Bend[]): Spread {
	let mean = central;
	let straight = 0;
	let curved = 0;
	let third = 0;
	let fourth = 0;
	for (const { first, second } of bends) {
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
	if (variance === 0) return { mean, deviation, skewness: 0, excess: 0, bent: 0 };
	return {
		mean,
		deviation,
		skewness: third / (variance * deviation),
		excess: fourth / (variance * variance),
		bent: curved / variance,
	};
}

/** The same of the logarithm of an answer over its central value: effects that multiply add up there. Undefined where an input alone
 *  brings the answer near zero, or beyond. */
export function logarithmic(central: number, bends: readonly Bend[]): readonly Bend[] | undefined {
	const made: Bend[] = [];
	for (const { first, second } of bends) {
		const up = 1 + (second + first) / central;
		const down = 1 + (second - first) / central;
		if (!(Math.min(up, down) > LEAST_LEFT)) return undefined;
		made.push({ first: Math.log(up / down) / 2, second: Math.log(up * down) / 2 });
	}
	return made;
}

const LEAST_LEFT = 0.7; // [-] of the central value, at a standard deviation of one input; chosen: nearer to zero, effects add up rather than multiply

/** Value that the answer stays below with a probability (Cornish & Fisher).
 *  x = mean + deviation·[z + γ(z² − 1)/6 + κ(z³ − 3z)/24 − γ²(2z³ − 5z)/36]
 *  Range   skewness up to about 1
 *  Source  Cornish & Fisher, Revue de l'Institut International de Statistique 5 (1937) 307–320, as R's FactorAnalytics has it
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
