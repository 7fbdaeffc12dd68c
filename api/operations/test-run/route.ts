import { testRunReport } from "../../../src/index.ts";
import { morningRun, twoReadings } from "../../demo/test-runs.ts";
import type { Body } from "../cost.ts";
import { record } from "../draw-cost.ts";
import { operation } from "../operation.ts";
import { wireTestRun } from "./answer.ts";
import { runDesigns, testRunPlan } from "./plan.ts";
import { TestRunRequest } from "./request.ts";
import { TestRunResponse } from "./response.ts";
import { RUN_RULES } from "./rules.ts";

export const testRun = operation({
	method: "post",
	path: "/v1/test-run",
	operationId: "assessTestRun",
	tag: "Plant",
	summary: "What did my heater really give, and why not more?",
	description: [
		"A measured run, row by row: the power that the tank took up, standardised to 700 W/m² as in ASAE S580, and by least squares what light",
		"reached the water and what heat was lost, each with its 95 % interval. With dish, site, beam and air it is held against the prediction",
		"for the plant as described, and the gap is laid to optics, losses or the tank. What the rows cannot tell is `undetermined`, never guessed,",
		"and `unlocks` says what to measure for it; what they tell loosely, `advice` says how to tell more closely. The intervals count the",
		"thermometer's noise and errors that stay in the run; they don't count a wrong volume, a dirty beam sensor, or a thermometer that misses",
		"part of the tank.",
	].join("\n"),
	input: TestRunRequest,
	output: TestRunResponse,
	examples: { morning: morningRun, twoReadings },
	maxAge: 0,
	cost: 150,
	costFactor: rowsFactor,
	costAdvice: () => ["/run/time", "send fewer rows"],
	designs: runDesigns,
	rules: RUN_RULES,
	plan: testRunPlan,
	outcome: ({ run, drawing, elevation }) => testRunReport(run, drawing, elevation),
	answer: (plan, report, request) => wireTestRun(request, plan, report),
	cautions: (_plan, report) => report.cautions,
	methods: (_plan, report) => report.methods,
});

const USUAL_ROWS = 61;
const LEAST = 1 / 30; // of the usual cost

/** A run of measurements costs by its rows, and less than that where they come faster than it marches. */
function rowsFactor(body: Body): number {
	const { time } = record(body.run);
	const more = (Array.isArray(time) ? time.length : USUAL_ROWS) / USUAL_ROWS;
	return Math.max(LEAST, Math.min(more, Math.sqrt(more)));
}
