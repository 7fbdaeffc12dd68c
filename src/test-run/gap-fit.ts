import type { Plant } from "../plant/plant.ts";
import { AS_DRAWN, type Cause, type Departures } from "./as-built-plant.ts";
import { heatContents, heatNoise } from "./heat-content.ts";
import type { Noise } from "./lump-information.ts";
import { predictedRun, type RunSky } from "./predicted-run.ts";
import type { TestRun } from "./run.ts";
import {
	combination,
	type Estimate,
	type Fitted,
	greatestCorrelation,
	trajectoryFit,
} from "./trajectory-fit.ts";

/** The departures with which a plant's prediction is closest to a run. */
export interface GapFit {
	readonly outcome: "fitted";
	readonly departures: Departures;
	readonly intervals: Readonly<Partial<Record<Cause, Estimate>>>; // of those fitted, each with its 95 % interval
	readonly correlations: Readonly<Partial<Record<Cause, number>>>; // greatest correlation with another, 0–1
	readonly slopes: Readonly<Partial<Record<Cause, number>>>; // derivative of the stored heat at the end [J]
	readonly noise: FitNoise;
}

/** The noise about a fit, and the evidence for its persistent part. */
export interface FitNoise extends Noise {
	readonly evidence: number; // see `Fitted`
}

const MOST_ROUNDS = 4;
const SMALL = 0.2; // change of a departure over its interval at which the iteration ends
const PROBE = 0.95; // ratio of the departure for the finite difference to the present one
const BOUNDS = [0.1, 20] as const; // outside which it is a different plant; our choice

/** Predicted heat content of the water for a plant with given departures [N] [J]. */
export function predictedHeat(plant: Plant, departures: Departures, run: TestRun, sky: RunSky): Float64Array {
	return heatContents(predictedRun(plant, departures, run, sky).run);
}

/** Departures by least squares of the simulated plant on the heat content of the run (Gauss–Newton, slopes by one more simulation each).
 *  @param causes  those to fit; "losses" includes that of the tank unless "tankLoss" is among them
 *  @param drawn   predicted heat content of the plant as drawn [N] [J]
 *  @returns       the fit; "tooFewRows", "collinear", or "outOfBounds" where the departures are implausible
 *  Assumes errors of the simulation drift like the other errors of the trajectory
 *  Check   known departures are recovered from simulated runs, tests/unit/test-run/gap-fit.slow.test.ts */
export function gapFit(
	plant: Plant,
	run: TestRun,
	sky: RunSky,
	causes: readonly Cause[],
	drawn: Float64Array,
): GapFit | { readonly outcome: "tooFewRows" | "collinear" | "outOfBounds" } {
	const measured = heatContents(run);
	const carried = (departures: Departures): Departures =>
		causes.includes("tankLoss") ? departures : { ...departures, tankLoss: departures.losses };
	let departures = AS_DRAWN;
	for (let round = 1; ; round++) {
		const heat = round === 1 ? drawn : predictedHeat(plant, carried(departures), run, sky);
		const slopes = causes.map((cause) => {
			const probed = { ...departures, [cause]: departures[cause] * PROBE };
			const there = predictedHeat(plant, carried(probed), run, sky);
			const step = probed[cause] - departures[cause];
			return there.map((held, row) => (held - heat[row]!) / step);
		});
		const gap = measured.map((held, row) => held - heat[row]!);
		const fit = trajectoryFit(run.time, gap, slopes, heatNoise(run));
		if (fit.outcome !== "fitted") return fit;
		const changes = causes.map((_, k) => combination(fit, unit(causes.length, k)));
		departures = changedDepartures(departures, causes, changes);
		if (causes.some((cause) => !(departures[cause] > BOUNDS[0] && departures[cause] < BOUNDS[1])))
			return { outcome: "outOfBounds" };
		if (
			changes.every(({ value, halfWidth }) => Math.abs(value) <= SMALL * halfWidth) ||
			round === MOST_ROUNDS
		)
			return gapFitOf(carried(departures), causes, changes, fit, slopes);
	}
}

function unit(size: number, k: number): number[] {
	return Array.from({ length: size }, (_, i) => (i === k ? 1 : 0));
}

function changedDepartures(
	from: Departures,
	causes: readonly Cause[],
	changes: readonly Estimate[],
): Departures {
	return {
		...from,
		...Object.fromEntries(causes.map((cause, k) => [cause, from[cause] + changes[k]!.value])),
	};
}

function gapFitOf(
	departures: Departures,
	causes: readonly Cause[],
	changes: readonly Estimate[],
	fit: Fitted,
	slopes: readonly Float64Array[],
): GapFit {
	const each = <T>(of: (cause: Cause, k: number) => T) =>
		Object.fromEntries(causes.map((cause, k) => [cause, of(cause, k)])) as Partial<Record<Cause, T>>;
	return {
		outcome: "fitted",
		departures,
		intervals: each((cause, k) => ({ value: departures[cause], halfWidth: changes[k]!.halfWidth })),
		correlations: each((_, k) => greatestCorrelation(fit.covariance, k)),
		slopes: each((_, k) => slopes[k]!.at(-1)!),
		noise: { reading: fit.noise, straying: fit.disturbance, evidence: fit.evidence },
	};
}
