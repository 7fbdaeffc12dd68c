import { normalStream } from "../../../src/numeric/random.ts";
import { testRunReport } from "../../../src/test-run/report.ts";
import { noisy, type Plan, runOf, trajectory } from "./runs.ts";

export const SEEDS = 200;

/** The amounts by which runs are said to stray [K], of those of which that is said.
 *  @param walk  of the thermometer, standard deviation in a minute [K] */
export function strays(plan: Plan, walk: number): readonly number[] {
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
