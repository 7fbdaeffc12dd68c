import { describe, expect, it } from "vitest";
import { type Advice, runAdvice } from "../../../src/test-run/advice.ts";
import { AS_DRAWN } from "../../../src/test-run/as-built-plant.ts";
import type { BetterRun } from "../../../src/test-run/better-runs.ts";
import { runFactors } from "../../../src/test-run/factors.ts";
import { explainedGap, type Gap } from "../../../src/test-run/gap.ts";
import { predictedRun } from "../../../src/test-run/predicted-run.ts";
import type { TestRun } from "../../../src/test-run/run.ts";
import { cavity, glazedCoil, measuredDish, openCoil, plant } from "../plant/plants.ts";
import { boundOf } from "./bound.ts";
import { MORNING, noisy, type Plan, runOf, skyOf, sunsetDay, tank, threeHours, trajectory } from "./runs.ts";

const NOISE = 0.1; // [K] of a reading
const ROWS = 1500;

const blankOf = (plan: Plan) => runOf(plan, new Float64Array(plan.rows).fill(290.15));

const adviceOf = (run: TestRun, gap: Gap | undefined, elevation = 0): readonly Advice[] =>
	runAdvice(run, { factors: runFactors(run), gap }, elevation, ROWS);

const of = (advice: readonly Advice[], kind: BetterRun["kind"]) =>
	advice.find(({ change }) => change.kind === kind);

/** A plan that goes on in the mean sun of its last hour. */
function goingOn(plan: Plan, added: number): Plan {
	const end = (plan.rows - 1) * plan.step;
	const minutes = Array.from({ length: 60 }, (_, i) => plan.beam(end - 60 * i));
	const mean = minutes.reduce((sum, x) => sum + x, 0) / 60;
	return {
		...plan,
		rows: plan.rows + Math.round(added / plan.step),
		beam: (time) => (time <= end ? plan.beam(time) : mean),
	};
}

describe.each([
	["measured dish", measuredDish],
	["cavity", cavity],
	["open coil", openCoil],
	["glazed coil", glazedCoil],
] as const)("what would narrow the losses of a %s", (_name, receiver) => {
	const drawn = { ...plant, receiver, tank };
	const blank = blankOf(threeHours);
	const sky = skyOf(blank);
	const predicted = predictedRun(drawn, AS_DRAWN, blank, sky).run;
	const noise = noisy(Float64Array.from(predicted.thermometers[0]!), NOISE, 4);
	const run = { ...blank, thermometers: [noise] };
	const gap = explainedGap(drawn, run, predicted, sky);
	const advice = adviceOf(run, gap);
	const now = boundOf(drawn, AS_DRAWN, blank, NOISE);

	/** What the advice leaves of a half-width against what the whole plant's own march leaves of the bound. */
	function compared(found: Advice | undefined, plan: Plan, reading: number) {
		const then = boundOf(drawn, AS_DRAWN, blankOf(plan), reading);
		const [expected] = found!.expected.filter((factor) => factor.of === "losses");
		const ratio = expected!.better / expected!.now / (then.losses / now.losses);
		expect(ratio).toBeGreaterThan(0.85);
		expect(ratio).toBeLessThan(1.15);
	}

	it("is three hours more, by as much as the whole plant's march says", () => {
		const longer = of(advice, "longerRun");
		if (longer?.change.kind !== "longerRun") throw new Error("no longer run");
		compared(longer, goingOn(threeHours, longer.change.added), NOISE);
	});

	it("is closer rows and a finer thermometer", () => {
		compared(of(advice, "closerRows"), { ...threeHours, rows: 1081, step: 10 }, NOISE);
		compared(of(advice, "finerThermometer"), threeHours, 0.01);
	});
});

describe("advice", () => {
	const truth = { optical: 0.62, loss: 8, tankLoss: 1.5 };
	const lumpOf = (plan: Plan, seed = 3) => runOf(plan, noisy(trajectory(truth, plan), NOISE, seed));
	const hour: Plan = { ...threeHours, rows: 61 };
	const kinds = (advice: readonly Advice[]) => advice.map(({ change }) => change.kind);

	it("is none where every factor is told to a tenth", () => {
		const plan: Plan = { ...threeHours, rows: 301, beam: MORNING };
		expect(adviceOf(lumpOf(plan), undefined)).toEqual([]);
	});

	it("is none without beam or air, or where two points tell nothing", () => {
		const run = lumpOf(hour);
		expect(adviceOf({ ...run, beam: undefined }, undefined)).toEqual([]);
		expect(adviceOf({ ...run, ambient: undefined }, undefined)).toEqual([]);
		expect(adviceOf(lumpOf({ ...threeHours, rows: 2, step: 10_800 }), undefined)).toEqual([]);
	});

	it("of an hour's run is every way, and only what is wide is expected of each", () => {
		const advice = adviceOf(lumpOf(hour), undefined);
		expect(kinds(advice)).toEqual(["longerRun", "hotterTank", "closerRows", "finerThermometer"]);
		for (const { expected } of advice)
			for (const { now, better } of expected) {
				expect(better).toBeGreaterThan(0);
				expect(better).toBeLessThan(now);
			}
		const [loss] = advice[0]!.expected.filter((factor) => factor.of === "loss");
		expect(loss!.now).toBeGreaterThan(0.8); // a tenth of 8 W/K
	});

	it("of white noise goes with the root of the rows and with the thermometer", () => {
		const still = Array.from({ length: 20 }, (_, i) => lumpOf(hour, i + 1)).find(
			(run) => runFactors(run).lump!.fit.disturbance === 0,
		)!;
		const advice = adviceOf(still, undefined);
		const left = (kind: BetterRun["kind"]) => {
			const [loss] = of(advice, kind)!.expected.filter((factor) => factor.of === "loss");
			return loss!.better / loss!.now;
		};
		expect(left("closerRows") * Math.sqrt(6)).toBeCloseTo(1, 1);
		const { noise } = runFactors(still);
		expect((left("finerThermometer") * noise) / 0.01).toBeCloseTo(1, 6);
	});

	it("goes on no further than the water may, and not at all from a tank that is hot already or at rest", () => {
		const longer = of(adviceOf(lumpOf(hour), undefined, 4000), "longerRun");
		if (longer?.change.kind !== "longerRun") throw new Error("no longer run");
		expect(longer.change.end).toBeLessThan(273.15 + 77); // water boils at 87 °C at 4000 m, ICAO
		const hot = {
			...lumpOf(hour),
			thermometers: [lumpOf(hour).thermometers[0]!].map((t) => Float64Array.from(t, (x) => x + 70)),
		};
		expect(kinds(adviceOf(hot, undefined))).not.toContain("longerRun");
		const dusk: Plan = { ...sunsetDay, rows: 281 };
		expect(kinds(adviceOf(lumpOf(dusk), undefined))).not.toContain("longerRun");
	});

	it("asks for no more rows than a run may have", () => {
		const run = lumpOf(hour);
		const [rows] = runAdvice(run, { factors: runFactors(run), gap: undefined }, 0, 201).filter(
			({ change }) => change.kind === "closerRows",
		);
		expect(rows!.change).toEqual({ kind: "closerRows", spacing: 20 });
	});
});

describe("a run from which water was drawn", () => {
	const exact = trajectory({ optical: 0.62, loss: 8, tankLoss: 1.5 }, threeHours);
	const broken = runOf(
		threeHours,
		noisy(exact, NOISE, 2).map((t, row) => (row > 100 ? t - 6 : t)),
	);

	it("is to be cut, not drawn out: no advice, though its factors are wide", () => {
		const factors = runFactors(broken);
		expect(factors.loss.outcome).toBe("undetermined");
		expect(adviceOf(broken, undefined)).toEqual([]);
		const leaking = runOf(
			threeHours,
			noisy(exact, NOISE, 2).map((t, row) => t - 6 * Math.min(1, Math.max(0, (row - 60) / 60))),
		); // as much, too slowly to be told from a loss
		expect(adviceOf(leaking, undefined).length).toBeGreaterThan(0);
	});
});
