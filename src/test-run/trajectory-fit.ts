import { type LeastSquares, leastSquares } from "../numeric/least-squares.ts";
import { boundedMaximum } from "../numeric/minimize.ts";
import { studentQuantile } from "../numeric/student.ts";
import type { Column } from "./run.ts";
import { innovationsOf, whitening } from "./whitening.ts";

/** Fitted factors of a trajectory. */
export interface Fitted {
	readonly outcome: "fitted";
	readonly values: Float64Array; // one per regressor [K]
	readonly covariance: readonly Float64Array[]; // [K][K]
	readonly freedom: number; // degrees of freedom
	readonly noise: number; // standard deviation of a reading, in the trajectory's unit
	readonly disturbance: number; // standard deviation of the drift of the trajectory from the model in a second
	readonly evidence: number; // for that drift: gain of restricted log-likelihood; 0 without drift
}

/** Factors of a trajectory, or the reason why they are not determined. */
export type TrajectoryFit = Fitted | { readonly outcome: "tooFewRows" | "collinear" };

/** An estimate with the half-width of its 95 % interval. */
export interface Estimate {
	readonly value: number;
	readonly halfWidth: number;
}

const LEAST_FREEDOM = 3;
const WEAKEST = Math.log(1e-6); // of the variance of the drift over a row relative to that of a reading; less counts as none
const STRONGEST = Math.log(1e4); // more reduces the fit to differences from row to row
const CLOSE = 0.1;

/** Factors of a trajectory that is level + Σ valueₖ · regressorₖ + error, by generalised least squares.
 *  The error has two parts: independent noise of each reading, and a drift that persists in the trajectory (sun, wind and oil that the
 *  columns miss, and model errors), a random walk. Their ratio has the greatest restricted likelihood.
 *  @param time        [N] [s]     @param observed  trajectory [N]     @param regressors  [K][N], each in its own unit
 *  @param leastNoise  lower bound of the standard deviation of a reading, from its resolution
 *  Error   of 200 runs with simulated noise 90–99 % include the true value in the stated 95 % interval, tests/unit/test-run/trials.test.ts;
 *          with drift about 90 %: a drift that is small compared with the noise is often not detected
 *  Source  Patterson & Thompson, Biometrika 58 (1971) 545–554 (restricted likelihood, from memory) */
export function trajectoryFit(
	time: Column,
	observed: Column,
	regressors: readonly Column[],
	leastNoise: number,
): TrajectoryFit {
	const freedom = time.length - 1 - regressors.length;
	if (freedom < LEAST_FREEDOM) return { outcome: "tooFewRows" };
	const solve = (ratio: number) => solution(time, observed, regressors, ratio);
	const withoutDrift = solve(0);
	if (!withoutDrift) return { outcome: "collinear" };
	const spacing = (time[time.length - 1]! - time[0]!) / (time.length - 1);
	const likelihood = (logRatio: number) =>
		solve(Math.exp(logRatio) / spacing)?.likelihood ?? Number.NEGATIVE_INFINITY;
	const logRatio = boundedMaximum(likelihood, WEAKEST, STRONGEST, CLOSE);
	const evidence = Math.max(0, likelihood(logRatio) - withoutDrift.likelihood);
	const straying = evidence > 0 ? Math.exp(logRatio) / spacing : 0;
	const fit = fitAboveNoise(solve, straying, freedom, leastNoise);
	return fit.outcome === "fitted" ? { ...fit, evidence } : fit;
}

/** The fit at the given ratio, or at one with which the noise of the readings is not below that of their resolution. */
function fitAboveNoise(
	solve: (ratio: number) => Solution | undefined,
	ratio: number,
	freedom: number,
	leastNoise: number,
): Omit<Fitted, "evidence"> | { readonly outcome: "collinear" } {
	const first = solve(ratio);
	if (!first) return { outcome: "collinear" };
	const least = leastNoise * leastNoise;
	const found = first.residualSum / freedom;
	const share = found < least ? found / least : 1;
	const fit = share < 1 ? solve(ratio * share) : first;
	if (!fit) return { outcome: "collinear" };
	const variance = Math.max(least, fit.residualSum / freedom);
	return {
		outcome: "fitted",
		values: fit.values,
		covariance: fit.inverse.map((row) => row.map((element) => element * variance)),
		freedom,
		noise: Math.sqrt(variance),
		disturbance: Math.sqrt(variance * ratio * share),
	};
}

type Solution = LeastSquares & { readonly likelihood: number };

function solution(
	time: Column,
	observed: Column,
	regressors: readonly Column[],
	ratio: number,
): Solution | undefined {
	const weights = whitening(time, ratio);
	const columns = regressors.map((column) => innovationsOf(column, weights));
	const fit = leastSquares(columns, innovationsOf(observed, weights));
	if (!fit) return undefined;
	const freedom = time.length - 1 - regressors.length;
	const spread = freedom * Math.log(fit.residualSum + Number.MIN_VALUE);
	return { ...fit, likelihood: -(spread + weights.logDeterminant + fit.logDeterminant) / 2 };
}

/** A weighted sum of fitted values. */
export function combination(fit: Fitted, weights: readonly number[]): Estimate {
	let value = 0;
	let variance = 0;
	for (let i = 0; i < weights.length; i++) {
		value += weights[i]! * fit.values[i]!;
		for (let j = 0; j < weights.length; j++) variance += weights[i]! * weights[j]! * fit.covariance[i]![j]!;
	}
	return { value, halfWidth: studentQuantile(fit.freedom) * Math.sqrt(Math.max(0, variance)) };
}

/** Greatest correlation of the error of one factor with that of another. */
export function greatestCorrelation(covariance: readonly Float64Array[], k: number): number {
	let most = 0;
	for (let j = 0; j < covariance.length; j++)
		if (j !== k)
			most = Math.max(
				most,
				Math.abs(covariance[k]![j]!) / Math.sqrt(covariance[k]![k]! * covariance[j]![j]!),
			);
	return most;
}
