import { describe, expect, it } from "vitest";
import { leastSquares } from "../../../src/numeric/least-squares.ts";
import { normalStream } from "../../../src/numeric/random.ts";
import { combination, greatestCorrelation, trajectoryFit } from "../../../src/test-run/trajectory-fit.ts";
import { innovationsOf, whitening } from "../../../src/test-run/whitening.ts";

const time = Float64Array.from({ length: 60 }, (_, i) => 60 * i + (i % 3) * 7);

describe("whitening", () => {
	it("makes rows of noise on a random walk independent and of equal variance", () => {
		const ratio = 0.004;
		const weights = whitening(time, ratio);
		const normal = normalStream(5);
		const runs = 4000;
		const sums = Array.from({ length: 4 }, () => 0);
		for (let run = 0; run < runs; run++) {
			let level = 0;
			const column = time.map((t, i) => {
				if (i > 0) level += Math.sqrt(ratio * (t - time[i - 1]!)) * normal();
				return level + normal();
			});
			const news = innovationsOf(column, weights);
			sums[0]! += news[0]! ** 2;
			sums[1]! += news[58]! ** 2;
			sums[2]! += news[10]! * news[11]!;
			sums[3]! += news[10]! * news[40]!;
		}
		expect(sums[0]! / runs).toBeCloseTo(1, 1);
		expect(sums[1]! / runs).toBeCloseTo(1, 1);
		expect(Math.abs(sums[2]! / runs)).toBeLessThan(0.06);
		expect(Math.abs(sums[3]! / runs)).toBeLessThan(0.06);
	});

	it("takes no notice of where a trajectory starts", () => {
		const weights = whitening(time, 0.01);
		const column = time.map((t) => Math.sin(t));
		const raised = innovationsOf(
			column.map((x) => x + 1000),
			weights,
		);
		for (const [i, news] of innovationsOf(column, weights).entries()) expect(raised[i]).toBeCloseTo(news, 9);
	});

	it("with no straying is least squares about a free level", () => {
		// Σ of squared innovations = Σ (x − mean)², the recursive residuals' identity (Brown, Durbin & Evans 1975)
		const column = time.map((t) => Math.cos(t));
		const mean = column.reduce((a, b) => a + b, 0) / column.length;
		const about = column.reduce((sum, x) => sum + (x - mean) ** 2, 0);
		expect(innovationsOf(column, whitening(time, 0)).reduce((sum, x) => sum + x * x, 0)).toBeCloseTo(
			about,
			10,
		);
	});
});

describe("least squares", () => {
	it("solves a system by hand", () => {
		const fit = leastSquares([Float64Array.of(1, 1, 1), Float64Array.of(0, 1, 2)], Float64Array.of(1, 2, 4))!;
		expect(Array.from(fit.values)).toEqual([expect.closeTo(5 / 6, 12), expect.closeTo(3 / 2, 12)]);
		expect(fit.residualSum).toBeCloseTo(1 / 6, 12);
		expect(fit.inverse[0]![0]).toBeCloseTo(5 / 6, 12);
		expect(fit.inverse[0]![1]).toBeCloseTo(-1 / 2, 12);
		expect(Math.exp(fit.logDeterminant)).toBeCloseTo(6, 10);
	});

	it("refuses columns of nothing, proportional columns and NaN", () => {
		const one = Float64Array.of(1, 2, 3);
		expect(leastSquares([new Float64Array(3)], one)).toBeUndefined();
		expect(leastSquares([one, one.map((x) => 7 * x)], one)).toBeUndefined();
		expect(leastSquares([Float64Array.of(1, Number.NaN, 2)], one)).toBeUndefined();
	});
});

describe("a fit", () => {
	const ramp = time.map((t) => t / 600);
	const bend = time.map((t) => (t / 600) ** 2);

	it("finds exact factors of an exact trajectory, and states the resolution's noise", () => {
		const fit = trajectoryFit(
			time,
			ramp.map((x, i) => 5 + 2 * x - 0.3 * bend[i]!),
			[ramp, bend],
			0.02,
		);
		if (fit.outcome !== "fitted") throw new Error(fit.outcome);
		expect(combination(fit, [1, 0]).value).toBeCloseTo(2, 9);
		expect(combination(fit, [0, 1]).value).toBeCloseTo(-0.3, 9);
		expect(fit.noise).toBeCloseTo(0.02, 12);
		expect(greatestCorrelation(fit.covariance, 0)).toBeGreaterThan(0.9);
		expect(greatestCorrelation(fit.covariance, 0)).toBeLessThan(1);
	});

	it("widens for an error that stays in the trajectory", () => {
		const normal = normalStream(9);
		const halfWidth = (walk: number) => {
			let level = 0;
			const observed = ramp.map((x) => {
				level += walk * normal();
				return 2 * x + level + 0.02 * normal();
			});
			const fit = trajectoryFit(time, observed, [ramp], 0.001);
			if (fit.outcome !== "fitted") throw new Error(fit.outcome);
			return combination(fit, [1]).halfWidth;
		};
		expect(halfWidth(0.05)).toBeGreaterThan(4 * halfWidth(0));
	});

	it("covers the truth under a walk as often as it says", () => {
		const normal = normalStream(11);
		let held = 0;
		for (let trial = 0; trial < 400; trial++) {
			let level = 0;
			const observed = ramp.map((x) => {
				level += 0.05 * normal();
				return 2 * x + level + 0.05 * normal();
			});
			const fit = trajectoryFit(time, observed, [ramp], 0.001);
			if (fit.outcome !== "fitted") throw new Error(fit.outcome);
			const { value, halfWidth } = combination(fit, [1]);
			if (Math.abs(value - 2) <= halfWidth) held++;
		}
		expect(held / 400).toBeGreaterThan(0.9);
		expect(held / 400).toBeLessThan(0.99);
	});

	it("of too few rows or of columns alike is none", () => {
		expect(trajectoryFit(time.slice(0, 4), ramp.slice(0, 4), [ramp.slice(0, 4)], 0.1).outcome).toBe(
			"tooFewRows",
		);
		expect(trajectoryFit(time, ramp, [ramp, ramp], 0.1).outcome).toBe("collinear");
	});
});
