import { describe, expect, it } from "vitest";
import { rowCautions } from "../../../src/test-run/row-cautions.ts";
import type { TestRun } from "../../../src/test-run/run.ts";
import { suddenFalls } from "../../../src/test-run/sudden-falls.ts";
import { noisy, runOf, sunsetDay, threeHours, trajectory } from "./runs.ts";

const truth = { optical: 0.62, loss: 8, tankLoss: 1.5 };
const exact = trajectory(truth, threeHours);
const codes = (run: TestRun, noise: number) => rowCautions(run, noise).map(({ code }) => code);

/** The run with water that cools by so much, evenly over some minutes from a row on. */
const drawn = (readings: Float64Array, row: number, minutes: number, fall: number) =>
	readings.map((t, i) => t - fall * Math.min(1, Math.max(0, (i - row) / minutes)));

describe("water that was drawn", () => {
	it.each([
		[1, 9],
		[1, 3],
		[5, 6],
		[8, 8],
	])("over %f min by %f K is named by its rows", (minutes, fall) => {
		const run = runOf(threeHours, noisy(drawn(exact, 100, minutes, fall), 0.1, 1));
		const [found, ...more] = suddenFalls(run, 0.04);
		expect(more).toEqual([]);
		expect(found!.from).toBeGreaterThanOrEqual(99);
		expect(found!.from).toBeLessThanOrEqual(101);
		expect(found!.to - found!.from).toBeLessThanOrEqual(minutes + 1);
		expect(found!.fall).toBeGreaterThan(fall - 0.25 * minutes - 0.3); // the sun warms it meanwhile by 0.25 K a minute at most
		expect(found!.fall).toBeLessThan(fall + 0.3);
		const caution = rowCautions(run, 0.04).find(({ code }) => code === "waterDrawn")!;
		expect(caution.parameters.rows).toBe(`${found!.from} to ${found!.to}`);
	});

	it("twice is named twice, in the order of the rows", () => {
		const twice = drawn(drawn(exact, 60, 2, 3), 120, 2, 6);
		const caution = rowCautions(runOf(threeHours, twice), 0.03).find(({ code }) => code === "waterDrawn")!;
		expect(caution.parameters.rows).toMatch(/^60 to 6\d, 120 to 12\d$/);
		const { fall } = caution.parameters;
		expect(typeof fall === "object" && fall.value).toBeGreaterThan(5);
	});

	it("is not what a cloud, a night or coarse and restless thermometers do", () => {
		for (let seed = 1; seed <= 50; seed++) {
			expect(codes(runOf(threeHours, noisy(exact, 0.1, seed)), 0.04)).not.toContain("waterDrawn");
			const restless = runOf(threeHours, noisy(exact, 0.5, seed));
			expect(codes({ ...restless, resolution: 0.5 }, 0.2)).not.toContain("waterDrawn");
		}
		const leaky = trajectory({ ...truth, loss: 40, tankLoss: 40 }, sunsetDay);
		expect(codes(runOf(sunsetDay, leaky), 0.03)).not.toContain("waterDrawn");
	});
});

describe("a beam read seldom", () => {
	const every = (rows: number) => {
		const taken = Array.from(exact.keys()).filter((row) => row % rows === 0);
		const run = runOf(threeHours, exact);
		const cut = (column: ArrayLike<number>) => taken.map((row) => column[row]!);
		return {
			...run,
			time: cut(run.time),
			thermometers: run.thermometers.map(cut),
			beam: cut(run.beam!),
			ambient: cut(run.ambient!),
		};
	};

	it("is told where a straight line stands for more than a quarter of an hour of sun", () => {
		expect(codes(every(10), 0.03)).not.toContain("sparseBeam");
		expect(codes(every(30), 0.03)).toContain("sparseBeam");
		expect(codes(every(180), Number.NaN)).toContain("sparseBeam");
		expect(codes({ ...every(180), beam: undefined }, Number.NaN)).not.toContain("sparseBeam");
	});

	it("does not matter with the pump at rest", () => {
		const run = every(30);
		expect(codes({ ...run, pumpOn: run.time.map(() => false) }, 0.03)).not.toContain("sparseBeam");
	});
});

describe("readings coarser than said", () => {
	const steps = (step: number, resolution: number) => {
		const celsius = exact.map((t) => Math.round((t - 273.15) / step) * step + 273.15);
		return rowCautions({ ...runOf(threeHours, celsius), resolution }, 0.1).find(
			({ code }) => code === "coarseReadings",
		)?.parameters;
	};

	it.each([0.2, 0.25, 0.5, 1, 2])("in steps of %f K are seen", (step) => {
		const told = steps(step, 0.1)?.step;
		expect(typeof told === "object" && told.value).toBe(step);
		expect(steps(step, step)).toBeUndefined();
	});

	it("are not seen where the thermometer shows what it should", () => {
		expect(steps(0.1, 0.1)).toBeUndefined();
		expect(steps(0.01, 0.1)).toBeUndefined();
	});

	it("are not guessed from a handful of readings", () => {
		const plan = { ...threeHours, rows: 6 };
		const run = runOf(
			plan,
			Float64Array.of(20, 21, 22, 23, 24, 25).map((t) => t + 273.15),
		);
		expect(codes(run, 0.1)).not.toContain("coarseReadings");
	});
});
