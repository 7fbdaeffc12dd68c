import { beforeAll, describe, expect, it } from "vitest";
import type { Plant as PlantOfRun } from "../../../src/plant/plant.ts";
import { AS_DRAWN, type Departures } from "../../../src/test-run/as-built-plant.ts";
import { type GapFit, gapFit, predictedHeat } from "../../../src/test-run/gap-fit.ts";
import { predictedRun } from "../../../src/test-run/predicted-run.ts";
import { cavity, measuredDish, openCoil, plant } from "../plant/plants.ts";
import { boundOf } from "./bound.ts";
import { noisy, runOf, skyOf, tank, threeHours } from "./runs.ts";
import { LEAST, MOST, THERMOMETER, TRIALS, tallied } from "./tally.ts";

// What a run makes of a plant's departures is right as often as its interval says, and no wider than it must be: two hundred
// noises on a simulated run, for each kind of receiver. gap.test.ts has single runs.

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
