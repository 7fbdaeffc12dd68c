import { describe, expect, it } from "vitest";
import type { Factor } from "../../../src/test-run/factor.ts";
import { factorOf } from "../../../src/test-run/factor.ts";
import { runFactors } from "../../../src/test-run/factors.ts";
import { storeHeatCapacity } from "../../../src/test-run/heat-content.ts";
import type { TestRun } from "../../../src/test-run/run.ts";
import { runningSpans } from "../../../src/test-run/running.ts";
import { AIR, noisy, type Plan, runOf, sunsetDay, threeHours, trajectory } from "./runs.ts";

const truth = { optical: 0.62, loss: 8, tankLoss: 1.5 };
const morning = runOf(threeHours, noisy(trajectory(truth, threeHours), 0.1, 1));
const day = runOf(sunsetDay, noisy(trajectory(truth, sunsetDay), 0.1, 1));

const needs = (factor: Factor) => (factor.outcome === "undetermined" ? factor.needs : []);
const reason = (factor: Factor) => (factor.outcome === "undetermined" ? factor.reason : undefined);

describe("what a run cannot tell", () => {
	it("of two points is everything", () => {
		const plan = { ...threeHours, rows: 2, step: 10_800 };
		const factors = runFactors(runOf(plan, Float64Array.of(290, 330)));
		for (const factor of [factors.effectiveAperture, factors.opticalFactor, factors.loss]) {
			expect(factor.outcome).toBe("undetermined");
			expect(reason(factor)).toBe("tooFewRows");
			expect(needs(factor)).toEqual(["moreRows"]);
		}
		expect(factors.noise).toBeNaN();
	});

	it("without beam or air is optics and loss, and it names the columns", () => {
		const dark = runFactors({ ...morning, beam: undefined });
		expect(needs(dark.opticalFactor)).toContain("beam");
		expect(needs(dark.loss)).toContain("beam");
		expect(needs(dark.loss)).not.toContain("ambient");
		const airless = runFactors({ ...morning, ambient: undefined });
		expect(needs(airless.loss)).toContain("ambient");
		expect(reason(airless.loss)).toBe("notMeasured");
	});

	it("without beam is not for want of rows: what is there is not asked for again", () => {
		const dark = runFactors({ ...morning, beam: undefined });
		expect(needs(dark.opticalFactor)).toEqual(["beam"]);
		expect(needs(dark.loss)).toEqual(["beam"]);
		expect(needs(dark.tankLoss)).toEqual(["rowsAtRest"]); // for which no beam is needed
		expect(needs(dark.collectorLoss)).toEqual(["beam", "rowsAtRest"]);
		const night = runFactors({ ...morning, pumpOn: Array.from(morning.time, () => false) });
		expect(needs(night.collectorLoss)).toEqual(["rowsRunning"]);
	});

	it("without the dish is the optical factor alone", () => {
		const { opticalFactor, effectiveAperture } = runFactors({ ...morning, aperture: undefined });
		expect(needs(opticalFactor)).toEqual(["aperture"]);
		expect(effectiveAperture.outcome).toBe("determined");
	});

	it("in the sun alone is the tank's loss; without oil in and out flow and loop loss", () => {
		const factors = runFactors(morning);
		expect(needs(factors.tankLoss)).toEqual(["rowsAtRest"]);
		expect(needs(factors.collectorLoss)).toEqual(["rowsAtRest"]);
		expect(needs(factors.capacityRate)).toEqual(["oilInAndOut"]);
		expect(needs(factors.loopLoss)).toEqual(["oilInAndOut", "rowsAtRest"]);
		expect(factors.opticalFactor.outcome).toBe("determined");
		expect(factors.loss.outcome).toBe("determined");
	});

	it("where sun and excess stand still is one from the other", () => {
		const still: TestRun = {
			...morning,
			beam: new Float64Array(181).fill(800),
			thermometers: [new Float64Array(181).fill(330)],
			ambient: new Float64Array(181).fill(290),
		};
		const { opticalFactor, loss } = runFactors(still);
		expect(reason(opticalFactor)).toBe("collinear");
		expect(reason(loss)).toBe("collinear");
		expect(needs(loss)).toContain("rowsAtRest");
	});

	it("in ten minutes of noise is how wide the interval gets", () => {
		const plan = { ...threeHours, rows: 11 };
		const { loss } = runFactors(runOf(plan, noisy(trajectory(truth, plan), 0.1, 3)));
		expect(loss.outcome).toBe("undetermined");
		expect(["collinear", "intervalTooWide"]).toContain(reason(loss));
		if (loss.outcome === "undetermined") expect(loss.interval!.high - loss.interval!.low).toBeGreaterThan(8);
	});

	it("is never an optical factor above 1", () => {
		expect(reason(runFactors({ ...morning, aperture: 1 }).opticalFactor)).toBe("unphysical");
	});
});

describe("the rule", () => {
	const possible = [0, 1] as const;
	it("is a half-width of half the value", () => {
		expect(factorOf({ value: 0.5, halfWidth: 0.25 }, possible, 0, []).outcome).toBe("determined");
		expect(factorOf({ value: 0.5, halfWidth: 0.251 }, possible, 0, [])).toMatchObject({
			outcome: "undetermined",
			reason: "intervalTooWide",
		});
		expect(factorOf({ value: 0.5, halfWidth: 0.3 }, possible, 0.99, [])).toMatchObject({
			reason: "collinear",
		});
		expect(factorOf({ value: 1.5, halfWidth: 0.1 }, possible, 0, [])).toMatchObject({ reason: "unphysical" });
		expect(factorOf({ value: Number.NaN, halfWidth: 1 }, possible, 0, []).outcome).toBe("undetermined");
	});
});

describe("rows at rest", () => {
	it("tell the tank's loss from the collector's", () => {
		const { loss, tankLoss, collectorLoss } = runFactors(day);
		for (const [factor, value] of [
			[loss, 8],
			[tankLoss, 1.5],
			[collectorLoss, 6.5],
		] as const) {
			if (factor.outcome !== "determined") throw new Error(factor.reason);
			expect(factor.low).toBeLessThan(value);
			expect(factor.high).toBeGreaterThan(value);
		}
	});

	it("alone tell the tank's loss, beam or none", () => {
		const rows = Array.from({ length: 241 }, (_, i) => i + 240);
		const cut = (column: ArrayLike<number>) => rows.map((row) => column[row]!);
		const night: TestRun = {
			...day,
			time: cut(day.time),
			thermometers: day.thermometers.map(cut),
			beam: undefined,
			ambient: cut(day.ambient!),
			pumpOn: rows.map(() => false),
		};
		const { tankLoss, loss } = runFactors(night);
		if (tankLoss.outcome !== "determined") throw new Error(tankLoss.reason);
		expect(tankLoss.value).toBeCloseTo(1.5, 1);
		expect(needs(loss)).toContain("rowsRunning");
		const whole = runFactors({ ...day, beam: undefined, pumpOn: Array.from(day.time, (_, i) => i < 240) });
		if (whole.tankLoss.outcome !== "determined") throw new Error(whole.tankLoss.reason);
		expect(whole.tankLoss.value).toBeCloseTo(tankLoss.value, 6);
	});

	it("are where the pump's column says, else half an hour without beam, not a cloud's quarter", () => {
		const spans = runningSpans(day);
		expect(spans.slice(0, 240).every(Boolean)).toBe(true);
		expect(spans.slice(240).some(Boolean)).toBe(false);
		const cloud = {
			...morning,
			beam: Float64Array.from(morning.beam!, (g, i) => (i > 60 && i < 75 ? 0 : g)),
		};
		expect(runningSpans(cloud).every(Boolean)).toBe(true);
		const pumpOn = Array.from(morning.time, (_, i) => i % 2 === 0);
		expect(runningSpans({ ...cloud, pumpOn })).toEqual(pumpOn.slice(0, -1));
	});
});

describe("oil in and out", () => {
	const CAPACITY_RATE = 90; // [W/K]
	const LOOP = 5; // [W/K]
	const COIL = 80; // [W/K] oil to water
	const plan: Plan = {
		...sunsetDay,
		rows: 721,
		beam: (time) => (time < 28_800 ? sunsetDay.beam(time / 2) : 0),
		resting: (time) => time >= 28_800,
	};

	/** Water and oil of a plant that heats through a loop, by Euler at one second. */
	function loopRun(): TestRun {
		const blank = runOf(plan, new Float64Array(plan.rows).fill(290));
		const [water, oilIn, oilOut] = [0, 0, 0].map(() => new Float64Array(plan.rows)) as [
			Float64Array,
			Float64Array,
			Float64Array,
		];
		let t = 290.15;
		for (let second = 0; second < plan.rows * plan.step; second++) {
			const rests = plan.resting(second);
			const air = AIR(second);
			const collected = rests ? 0 : 1.2 * plan.beam(second);
			const oil = rests ? air : (collected + COIL * t + LOOP * air) / (COIL + LOOP);
			if (second % plan.step === 0) {
				const row = second / plan.step;
				water[row] = t;
				oilIn[row] = oil - collected / CAPACITY_RATE / 2;
				oilOut[row] = oil + collected / CAPACITY_RATE / 2;
			}
			const gained = (rests ? 0 : COIL * (oil - t)) - 1.5 * (t - air);
			t += gained / storeHeatCapacity(blank, t);
		}
		return { ...blank, thermometers: [noisy(water, 0.05, 1)], oilIn: noisy(oilIn, 0.05, 2), oilOut };
	}

	it("tell flow and loop loss", () => {
		const run = loopRun();
		const { capacityRate, loopLoss } = runFactors(run);
		if (capacityRate.outcome !== "determined") throw new Error(capacityRate.reason);
		expect(capacityRate.low).toBeLessThan(CAPACITY_RATE);
		expect(capacityRate.high).toBeGreaterThan(CAPACITY_RATE);
		if (loopLoss.outcome !== "determined") throw new Error(loopLoss.reason);
		expect(loopLoss.low).toBeLessThan(LOOP);
		expect(loopLoss.high).toBeGreaterThan(LOOP);
		expect(needs(runFactors({ ...run, ambient: undefined }).capacityRate)).toEqual(["ambient"]);
	});
});
