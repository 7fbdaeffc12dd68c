import type { Plant } from "../../../src/plant/plant.ts";
import type { Departures } from "../../../src/test-run/as-built-plant.ts";
import { predictedRun } from "../../../src/test-run/predicted-run.ts";
import type { TestRun } from "../../../src/test-run/run.ts";
import { skyOf } from "./runs.ts";

const STEP = 0.01; // of a departure, either way

/** Standard deviations of optics and losses that no unbiased estimate from these rows can beat (Cramér–Rao), by central
 *  differences of the predicted water temperature. The readings' noise is white and of known size; what the tank held at
 *  first is free, as each reading errs. Takes nothing from the estimator: with M = I − 11ᵀ/N, covariance = σ²·(SᵀMS)⁻¹.
 *  @param noise  of a reading, standard deviation [K]
 *  Source  Kay, Fundamentals of Statistical Signal Processing I (1993), theorem 3.2 (from memory) */
export function boundOf(drawn: Plant, built: Departures, run: TestRun, noise: number) {
	const readings = (departures: Departures) =>
		predictedRun(drawn, departures, run, skyOf(run)).run.thermometers[0]!;
	const slope = (to: (by: number) => Partial<Departures>) => {
		const [above, below] = [STEP, -STEP].map((by) => readings({ ...built, ...to(by) }));
		return Array.from(above!, (t, row) => (t - below![row]!) / (2 * STEP));
	};
	const optics = slope((by) => ({ optics: built.optics + by }));
	const losses = slope((by) => ({ losses: built.losses + by, tankLoss: built.tankLoss + by }));
	const [oo, ol, ll] = [
		covariation(optics, optics),
		covariation(optics, losses),
		covariation(losses, losses),
	];
	const determinant = oo * ll - ol * ol;
	return {
		optics: noise * Math.sqrt(ll / determinant),
		losses: noise * Math.sqrt(oo / determinant),
	};
}

function covariation(a: readonly number[], b: readonly number[]): number {
	const mean = (column: readonly number[]) => column.reduce((sum, x) => sum + x, 0) / column.length;
	const [ofA, ofB] = [mean(a), mean(b)];
	return a.reduce((sum, x, row) => sum + (x - ofA) * (b[row]! - ofB), 0);
}
