import { describe, expect, it } from "vitest";
import type { Plant } from "../../../src/plant/plant.ts";
import { AS_DRAWN, type Departures } from "../../../src/test-run/as-built-plant.ts";
import { explainedGap, type Gap } from "../../../src/test-run/gap.ts";
import { predictedRun } from "../../../src/test-run/predicted-run.ts";
import type { TestRun } from "../../../src/test-run/run.ts";
import { cavity, glazedCoil, lagging, measuredDish, openCoil, plant } from "../plant/plants.ts";
import { noisy, type Plan, runOf, skyOf, sunsetDay, tank, threeHours } from "./runs.ts";

const drawn: Plant = { ...plant, tank: { ...tank, startTemperatures: new Float64Array(10).fill(290.15) } };

/** The gap of a run that another plant made, read by a thermometer that errs by 0.1 K. */
function gapOf(drawing: Plant, made: (run: TestRun) => TestRun, plan: Plan): Gap {
	const blank = runOf(plan, new Float64Array(plan.rows).fill(290.15));
	const run = made(blank);
	const [exact] = run.thermometers;
	const noise = { ...run, thermometers: [noisy(Float64Array.from(exact!), 0.1, 4)] };
	const sky = skyOf(blank);
	return explainedGap(drawing, noise, predictedRun(drawing, AS_DRAWN, blank, sky).run, sky);
}

const builtBy =
	(built: Plant, departures: Departures = AS_DRAWN) =>
	(blank: TestRun): TestRun =>
		predictedRun(built, departures, blank, skyOf(blank)).run;

describe.each([
	["measured dish", { ...measuredDish, lossCoefficient: 9 }],
	["cavity", cavity],
	["open coil", openCoil],
	["glazed coil", glazedCoil],
] as const)("a gap of a plant with %s", (_name, receiver) => {
	const drawing: Plant = { ...drawn, receiver };

	it("is none where the plant is as drawn", () => {
		const gap = gapOf(drawing, builtBy(drawing), threeHours);
		expect(gap.verdict).toBe("none");
		expect(gap.causes).toEqual([]);
	});

	it("is the mirror's where the mirror is dull, by as much as it is", () => {
		const dull = { ...drawing, dish: { ...drawing.dish, reflectance: 0.9 * drawing.dish.reflectance } };
		const measuredDull =
			receiver.kind === "efficiencyLine"
				? { ...drawing, receiver: { ...receiver, opticalEfficiency: 0.9 * receiver.opticalEfficiency } }
				: dull;
		const gap = gapOf(drawing, builtBy(measuredDull), threeHours);
		expect(gap.verdict).toBe("explained");
		expect(gap.causes).toEqual(["optics"]);
		const { ratio, power } = gap.shares[0]!;
		if (ratio.outcome !== "determined") throw new Error(ratio.reason);
		expect(ratio.low).toBeLessThan(0.9);
		expect(ratio.high).toBeGreaterThan(0.9);
		expect(power!.value).toBeLessThan(-50);
		expect(gap.power.value).toBeLessThan(-50);
		expect(gap.temperature).toBeLessThan(-2);
	});

	it("is the losses' where they are twice as large", () => {
		const gap = gapOf(drawing, builtBy(drawing, { optics: 1, losses: 2, tankLoss: 2 }), threeHours);
		expect(gap.causes).toEqual(["losses"]);
		const { ratio } = gap.shares[1]!;
		if (ratio.outcome !== "determined") throw new Error(ratio.reason);
		expect(ratio.low).toBeLessThan(2);
		expect(ratio.high).toBeGreaterThan(2);
	});
});

describe("a gap", () => {
	it("is the tank's where its lagging is thin, by the night's rows", () => {
		const thin = { ...drawn, tank: { ...drawn.tank, insulation: lagging(0.015) } };
		const gap = gapOf(drawn, builtBy(thin), sunsetDay);
		expect(gap.causes[0]).toBe("tankLoss");
		expect(gap.causes).not.toContain("optics");
	});

	it("cannot be told from two points, nor from a run of ten minutes", () => {
		const dull = builtBy(drawn, { ...AS_DRAWN, optics: 0.8 });
		const two = gapOf(drawn, dull, { ...threeHours, rows: 2, step: 10_800 });
		expect(two.verdict).toBe("undetermined");
		for (const { ratio } of two.shares)
			expect(ratio).toMatchObject({ reason: "tooFewRows", needs: ["moreRows"] });
		const short = gapOf(drawn, dull, { ...threeHours, rows: 11 });
		for (const { ratio } of short.shares) expect(ratio.outcome).toBe("undetermined");
	});

	it("is undetermined where the plant would have to be another one", () => {
		const gap = gapOf(drawn, builtBy(drawn, { ...AS_DRAWN, optics: 0.05 }), threeHours);
		expect(gap.verdict).toBe("undetermined");
		for (const { ratio } of gap.shares) expect(ratio).toMatchObject({ reason: "unphysical" });
	});

	it("takes the dish as turned away where the pump was off", () => {
		const pumpOn = Array.from({ length: threeHours.rows }, (_, row) => row < 90 || row > 150);
		const off = (blank: TestRun) => builtBy(drawn)({ ...blank, pumpOn });
		const blank = runOf(threeHours, new Float64Array(threeHours.rows).fill(290.15));
		const end = (run: TestRun) => run.thermometers[0]![threeHours.rows - 1]!;
		expect(end(off(blank))).toBeLessThan(end(builtBy(drawn)(blank)) - 3);
	});
});
