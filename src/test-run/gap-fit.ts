import type { Plant } from "../plant/plant.ts";
import { AS_DRAWN, type Cause, type Departures } from "./as-built-plant.ts";
import { heatContents, heatNoise } from "./heat-content.ts";
import type { Noise } from "./lump-information.ts";
import { predictedRun, type RunSky } from "./predicted-run.ts";
import type { TestRun } from "./run.ts";
import { combination, type Estimate, type Fitted, likeness, trajectoryFit } from "./trajectory-fit.ts";

/** The departures that bring a plant's prediction closest to a run. */
export interface GapFit {
	readonly outcome: "fitted";
	readonly departures: Departures;
	readonly intervals: Readonly<Partial<Record<Cause, Estimate>>>; // of those fitted, each with its 95 % interval
	readonly correlations: Readonly<Partial<Record<Cause, number>>>; // greatest with another's, 0–1
	readonly slopes: Readonly<Partial<Record<Cause, number>>>; // of the heat kept at the end on each [J]
	readonly noise: FitNoise;
}

/** The noise about a fit, and how much speaks for the part of it that stays. */
export interface FitNoise extends Noise {
	readonly evidence: number; // see `Fitted`
}

const MOST_ROUNDS = 4;
const SMALL = 0.2; // change of a departure over its interval at which the rounds end
const PROBE = 0.95; // departure at which the march's slope is taken, over the one at hand
const BOUNDS = [0.1, 20] as const; // beyond which a plant is no longer the one drawn; our choice

/** Heat content of the water as a plant that departs so far should have it [N] [J]. */
export function predictedHeat(plant: Plant, departures: Departures, run: TestRun, sky: RunSky): Float64Array {
	return heatContents(predictedRun(plant, departures, run, sky).run);
}

/** Departures by least squares of the whole plant's march on the run's heat content (Gauss–Newton, slopes by a second march each).
 *  @param causes  those to be fitted; "losses" carries the tank's along unless "tankLoss" is among them
 *  @param drawn   heat content as the plant drawn should have had it [N] [J]
 *  @returns       the fit; "tooFewRows", "collinear", or "outOfBounds" where the plant would have to be another one
 *  Assumes what the march itself gets wrong strays like the rest of the trajectory's error
 *  Check   runs of plants with known departures come back, tests/unit/test-run/gap-fit.slow.test.ts */
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
		departures = moved(departures, causes, changes);
		if (causes.some((cause) => !(departures[cause] > BOUNDS[0] && departures[cause] < BOUNDS[1])))
			return { outcome: "outOfBounds" };
		if (
			changes.every(({ value, halfWidth }) => Math.abs(value) <= SMALL * halfWidth) ||
			round === MOST_ROUNDS
		)
			return gathered(carried(departures), causes, changes, fit, slopes);
	}
}

function unit(size: number, k: number): number[] {
	return Array.from({ length: size }, (_, i) => (i === k ? 1 : 0));
}

function moved(from: Departures, causes: readonly Cause[], changes: readonly Estimate[]): Departures {
	return {
		...from,
		...Object.fromEntries(causes.map((cause, k) => [cause, from[cause] + changes[k]!.value])),
	};
}

function gathered(
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
		correlations: each((_, k) => likeness(fit.covariance, k)),
		slopes: each((_, k) => slopes[k]!.at(-1)!),
		noise: { reading: fit.noise, straying: fit.disturbance, evidence: fit.evidence },
	};
}
