import { beforeAll, describe, expect, it } from "vitest";
import type { Plant as PlantOfRun } from "../../../src/plant/plant.ts";
import { AS_DRAWN, type Departures } from "../../../src/test-run/as-built-plant.ts";
import type { Factor } from "../../../src/test-run/factor.ts";
import { runFactors } from "../../../src/test-run/factors.ts";
import { type GapFit, gapFit, predictedHeat } from "../../../src/test-run/gap-fit.ts";
import { predictedRun } from "../../../src/test-run/predicted-run.ts";
import { cavity, measuredDish, openCoil, plant } from "../plant/plants.ts";
import { boundOf } from "./bound.ts";
import {
	noisy,
	type Plan,
	runOf,
	skyOf,
	sunsetDay,
	type Truth,
	tank,
	threeHours,
	trajectory,
} from "./runs.ts";

const TRIALS = 200;
const THERMOMETER = 0.1; // [K] standard deviation of a reading
const LEAST = 0.9 * TRIALS; // of trials whose 95 % interval holds the truth
const MOST = 0.99 * TRIALS;

const truth: Truth = { optical: 0.62, loss: 8, tankLoss: 1.5 };

interface Tally {
	held: number;
	halfWidth: number; // sum over trials, over the true value
}

/** How often an interval holds the truth, and how wide it is. */
function tallied(interval: (seed: number) => { readonly low: number; readonly high: number }, value: number) {
	const tally: Tally = { held: 0, halfWidth: 0 };
	for (let seed = 1; seed <= TRIALS; seed++) {
		const { low, high } = interval(seed);
		if (low <= value && value <= high) tally.held++;
		tally.halfWidth += (high - low) / 2 / value / TRIALS;
	}
	return tally;
}

function intervalOf(factor: Factor): { readonly low: number; readonly high: number } {
	if (factor.outcome === "determined") return factor;
	if (!factor.interval) throw new Error(`no interval: ${factor.reason}`);
	return factor.interval;
}

describe("a made-up lump with 0.1 K of noise gives its factors back in 90–99 % of 200 trials", () => {
	const cases: readonly (readonly [string, Plan])[] = [
		["three hours by the minute with a cloud", threeHours],
		["three hours of steady sun", { ...threeHours, beam: () => 820 }],
		["three hours by five minutes", { ...threeHours, rows: 37, step: 300 }],
		["four hours of sun and four of night", sunsetDay],
	];
	it.each(cases)("%s", (_name, plan) => {
		const exact = trajectory(truth, plan);
		const found = Array.from({ length: TRIALS }, (_, i) =>
			runFactors(runOf(plan, noisy(exact, THERMOMETER, i + 1))),
		);
		const factors = (seed: number) => found[seed - 1]!;
		const tallies = [
			tallied((seed) => intervalOf(factors(seed).opticalFactor), truth.optical),
			tallied((seed) => intervalOf(factors(seed).loss), truth.loss),
			...(plan === sunsetDay ? [tallied((seed) => intervalOf(factors(seed).tankLoss), truth.tankLoss)] : []),
		];
		for (const { held } of tallies) {
			expect(held).toBeGreaterThanOrEqual(LEAST);
			expect(held).toBeLessThanOrEqual(MOST);
		}
		if (plan.step > 60) return;
		for (const { halfWidth } of tallies) expect(halfWidth).toBeLessThan(0.1);
	});
});

/** The gap fits of runs that differ by their noise alone. */
function trialsOf(drawn: PlantOfRun, built: Departures): readonly GapFit[] {
	const blank = runOf(threeHours, new Float64Array(threeHours.rows).fill(290.15));
	const sky = skyOf(blank);
	const [exact] = predictedRun(drawn, built, blank, sky).run.thermometers;
	const heat = predictedHeat(drawn, AS_DRAWN, blank, sky);
	return Array.from({ length: TRIALS }, (_, i) => {
		const run = { ...blank, thermometers: [noisy(Float64Array.from(exact!), THERMOMETER, i + 1)] };
		const fit = gapFit(drawn, run, sky, ["optics", "losses"], heat);
		if (fit.outcome !== "fitted") throw new Error(fit.outcome);
		return fit;
	});
}

// Half-widths within a tenth, but for the loss of receivers that lose little beside what they take up: there the rows
// themselves hold no more than a fifth, whatever the fit.
describe.each([
	["measured dish", { ...measuredDish, lossCoefficient: 9 }],
	["cavity", cavity],
	["open coil", openCoil],
] as const)("a run of the service's own simulation of a %s with 0.1 K of noise", (name, receiver) => {
	const control = { ...plant.loop.control, oilLimit: 2000 }; // out of reach, so that it divides no step of the march
	const drawn = { ...plant, receiver, tank, loop: { ...plant.loop, control } };
	const built: Departures = { ...AS_DRAWN, optics: 0.93, losses: 1.3, tankLoss: 1.3 };
	const blank = runOf(threeHours, new Float64Array(threeHours.rows).fill(290.15));
	let fits: readonly GapFit[];
	let bound: ReturnType<typeof boundOf>;
	beforeAll(() => {
		fits = trialsOf(drawn, built);
		bound = boundOf(drawn, built, blank, THERMOMETER);
	}, 120_000);

	it.each(["optics", "losses"] as const)("gives back its %s in 90–99 % of 200 trials", (cause) => {
		const { held, halfWidth } = tallied((seed) => {
			const estimate = fits[seed - 1]!.intervals[cause]!;
			return { low: estimate.value - estimate.halfWidth, high: estimate.value + estimate.halfWidth };
		}, built[cause]);
		expect(held).toBeGreaterThanOrEqual(LEAST);
		expect(held).toBeLessThanOrEqual(MOST);
		expect(halfWidth).toBeLessThan(cause === "optics" || name === "measured dish" ? 0.1 : 0.3);
	});

	it.each(["optics", "losses"] as const)("tells its %s as closely as any unbiased estimate can", (cause) => {
		const values = fits.map((fit) => fit.intervals[cause]!.value);
		const mean = values.reduce((sum, x) => sum + x, 0) / TRIALS;
		const spread = Math.sqrt(values.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (TRIALS - 1));
		// 200 draws know a spread to ±5 %, one standard deviation
		expect(spread / bound[cause]).toBeGreaterThan(0.85);
		expect(spread / bound[cause]).toBeLessThan(1.15);
		// the median: two fits in five take chance for an error that stays in the run, and are wider for it
		const halfWidths = fits.map((fit) => fit.intervals[cause]!.halfWidth).toSorted((a, b) => a - b);
		expect(halfWidths[TRIALS / 2]! / (1.96 * bound[cause])).toBeGreaterThan(0.85);
		expect(halfWidths[TRIALS / 2]! / (1.96 * bound[cause])).toBeLessThan(1.15);
		expect(halfWidths.reduce((sum, x) => sum + x, 0) / TRIALS / (1.96 * bound[cause])).toBeLessThan(1.3);
	});
});
