import { describe, expect, it } from "vitest";
import { normalStream } from "../../../src/numeric/random.ts";
import { testRunReport } from "../../../src/test-run/report.ts";
import { noisy, type Plan, runOf, sunsetDay, threeHours, trajectory } from "./runs.ts";

const SEEDS = 200;

/** The amounts by which runs are said to stray [K], of those of which that is said.
 *  @param walk  of the thermometer, standard deviation in a minute [K] */
function strays(plan: Plan, walk: number): readonly number[] {
	const exact = trajectory({ optical: 0.62, loss: 8, tankLoss: 1.5 }, plan);
	return Array.from({ length: SEEDS }, (_, i) => {
		const step = normalStream(i + 5001);
		let drift = 0;
		const readings = noisy(exact, 0.1, i + 1).map((t) => {
			drift += walk * Math.sqrt(plan.step / 60) * step();
			return t + drift;
		});
		const { cautions } = testRunReport(runOf(plan, readings), undefined, 500);
		return cautions.find(({ code }) => code === "strayingRun")?.parameters.strays;
	}).flatMap((strayed) => (typeof strayed === "object" ? [strayed.value] : []));
}

describe("a caution of readings that stray", () => {
	it("comes by chance in some run of twenty that only scatters", () => {
		expect(strays(threeHours, 0).length / SEEDS).toBeLessThan(0.09); // 5 % and 2.6 standard deviations of 200 draws
		expect(strays(sunsetDay, 0).length / SEEDS).toBeLessThan(0.09);
	});

	it("comes of a thermometer that drifts by 0.03 K in a minute, and says by how much it does over the run", () => {
		const found = strays(threeHours, 0.03);
		expect(found.length / SEEDS).toBeGreaterThan(0.95);
		const mean = found.reduce((sum, x) => sum + x, 0) / found.length;
		const duration = ((threeHours.rows - 1) * threeHours.step) / 60;
		expect(mean / (0.03 * Math.sqrt(duration))).toBeCloseTo(1, 1);
	});

	it("comes the oftener the longer a small drift goes on", () => {
		const [short, long] = [threeHours, sunsetDay].map((plan) => strays(plan, 0.008).length / SEEDS);
		expect(short).toBeGreaterThan(0.25);
		expect(long).toBeGreaterThan(0.8);
	});
});
