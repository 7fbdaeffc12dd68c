import { describe, expect, it } from "vitest";
import { water } from "../../../src/fluids/water.ts";
import { normalStream } from "../../../src/numeric/random.ts";
import { delivered } from "../../../src/test-run/delivered.ts";
import { storeHeatCapacity, storeOf } from "../../../src/test-run/heat-content.ts";
import { runIntervals } from "../../../src/test-run/intervals.ts";
import type { TestRun } from "../../../src/test-run/run.ts";
import { standardLine } from "../../../src/test-run/standardised-power.ts";
import { AREA, noisy, runOf, threeHours, trajectory } from "./runs.ts";

const plan = { ...threeHours, rows: 361, beam: () => 700 };
const exact = trajectory({ optical: 0.62, loss: 8, tankLoss: 1.5 }, plan);
const run = runOf(plan, exact);
const line = (of: TestRun) => standardLine(of, runIntervals(of));

describe("intervals", () => {
	it("are ten minutes each, end to end, and give the run's heat between them", () => {
		const intervals = runIntervals(run);
		expect(intervals).toHaveLength(36);
		for (const [i, { length, from }] of intervals.entries()) {
			expect(length).toBe(600);
			expect(from).toBe(10 * i);
		}
		const heat = intervals.reduce((sum, { power, length }) => sum + power * length, 0);
		expect(heat).toBeCloseTo(delivered(run).heat, 3);
	});

	it("of coarser rows are as long as the rows make them, and of a shorter run none", () => {
		const coarse = { ...plan, rows: 13, step: 900 };
		expect(runIntervals(runOf(coarse, exact.filter((_, i) => i % 15 === 0).slice(0, 13)))[0]!.length).toBe(
			900,
		);
		expect(runIntervals(runOf({ ...plan, rows: 9 }, exact.slice(0, 9)))).toEqual([]);
	});
});

describe("delivered power", () => {
	it("of 1 kW for an hour is 1 kW, water and wall together", () => {
		const { waterMass, wallCapacity } = storeOf(run);
		const heat = (t: number) => waterMass * water.enthalpy(t) + wallCapacity * (t - 273.15);
		let end = 290;
		while (heat(end) - heat(290) < 3.6e6) end += 1e-5;
		const hour = runOf({ ...plan, rows: 2, step: 3600 }, Float64Array.of(290, end));
		const { power, efficiency } = delivered(hour);
		expect(power.value).toBeCloseTo(1000, 1);
		expect(efficiency!.value).toBeCloseTo(1000 / (700 * AREA), 4);
		// GUM 4.3.7: two readings, each uniform within ±0.05 K
		expect(power.halfWidth).toBeCloseTo(
			(1.96 * Math.SQRT2 * 0.1 * storeHeatCapacity(run, (290 + end) / 2)) / Math.sqrt(12) / 3600,
			6,
		);
	});

	it("has an efficiency only where beam and aperture are known and the sun shone", () => {
		expect(delivered({ ...run, beam: undefined }).efficiency).toBeUndefined();
		expect(delivered({ ...run, aperture: undefined }).efficiency).toBeUndefined();
		expect(delivered({ ...run, beam: new Float64Array(361) }).efficiency).toBeUndefined();
	});
});

describe("the standard line", () => {
	it("of a lump with one loss is that line: intercept F·A·700, slope −U, each by the water's share of the heat", () => {
		const found = line(run);
		if (found.outcome !== "determined") throw new Error(found.outcome);
		const { waterMass } = storeOf(run);
		const share = (waterMass * 4186) / storeHeatCapacity(run, 320); // S580 counts the water alone
		expect(found.slope / (-8 * share)).toBeCloseTo(1, 1);
		expect(found.singleFigure / ((0.62 * AREA * 700 - 8 * 50) * share)).toBeCloseTo(1, 2);
		expect(found.determination).toBeGreaterThan(0.99);
		expect(found.counted).toBe(36);
		expect(found.within).toBe(true);
		expect(found.asInStandard).toBe(false); // the water starts below 40 °C
	});

	it("scales any sun to 700 W/m²", () => {
		const strong = { ...plan, beam: () => 900 };
		const found = line(runOf(strong, trajectory({ optical: 0.62, loss: 0, tankLoss: 0 }, strong)));
		const usual = line(runOf(plan, trajectory({ optical: 0.62, loss: 0, tankLoss: 0 }, plan)));
		if (found.outcome === "undetermined" || usual.outcome === "undetermined") throw new Error("no line");
		expect(found.singleFigure / usual.singleFigure).toBeCloseTo(1, 2);
	});

	it("errs by the resolution as much as it says", () => {
		const uniform = 0.1 / Math.sqrt(12);
		const figures = Array.from({ length: 300 }, (_, seed) => {
			const found = line({ ...run, thermometers: [noisy(exact, uniform, seed + 1)] });
			if (found.outcome === "undetermined") throw new Error(found.reason);
			return found.singleFigure;
		});
		const mean = figures.reduce((a, b) => a + b, 0) / figures.length;
		const deviation = Math.sqrt(figures.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (figures.length - 1));
		const found = line(run);
		if (found.outcome === "undetermined") throw new Error(found.reason);
		expect(found.fromResolution / (1.96 * deviation)).toBeGreaterThan(0.88); // 300 draws know a deviation to ±8 %
		expect(found.fromResolution / (1.96 * deviation)).toBeLessThan(1.12);
	});

	it("leaves out intervals of weak sun, and is none of too few, of no spread or of no beam", () => {
		const cloudy = line({
			...run,
			beam: Float64Array.from(run.beam!, (g, i) => (i >= 100 && i < 150 ? 200 : g)),
		});
		if (cloudy.outcome === "undetermined") throw new Error(cloudy.reason);
		expect(cloudy.leftOut).toBeGreaterThanOrEqual(5);
		expect(line({ ...run, beam: undefined })).toMatchObject({ reason: "notMeasured" });
		expect(line(runOf({ ...plan, rows: 31 }, exact.slice(0, 31)))).toMatchObject({
			reason: "tooFewIntervals",
		});
		const normal = normalStream(1);
		const still = Float64Array.from(run.ambient!, (t) => t + 30 + 0.01 * normal());
		expect(line({ ...run, thermometers: [still] })).toMatchObject({ reason: "noSpread" });
	});
});
