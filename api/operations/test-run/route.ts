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
	summary: "Assessment of a measured test run",
	description: [
		"Assesses a measured run: the power stored in the tank, standardised to 700 W/m² as in ASAE S580, and the light collected and heat lost,",
		"fitted by least squares with 95 % intervals. With dish, site, beam and air temperature, the run is compared with the prediction for the plant",
		"as described, and the gap is attributed to optics, losses or the tank. What the rows do not determine is `undetermined`, never guessed;",
		"`unlocks` lists what to measure for it, and `advice` how to narrow wide intervals. The intervals include the thermometer's noise and errors",
		"that persist through the run. They exclude a wrong volume, a dirty beam sensor and a thermometer that misses part of the tank.",
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

/** The cost grows with the rows, and more slowly once they are closer than the steps of the prediction. */
function rowsFactor(body: Body): number {
	const { time } = record(body.run);
	const more = (Array.isArray(time) ? time.length : USUAL_ROWS) / USUAL_ROWS;
	return Math.max(LEAST, Math.min(more, Math.sqrt(more)));
}
