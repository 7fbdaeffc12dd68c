import { testRunReport } from "../../../src/index.ts";
import { morningRun, twoReadings } from "../../demo/test-runs.ts";
import { type Assumed, defaultsTaken, filling } from "../../wire/defaults.ts";
import { operation } from "../operation.ts";
import { wireTestRun } from "./answer.ts";
import { testRunPlan } from "./plan.ts";
import { TestRunRequest } from "./request.ts";
import { TestRunResponse } from "./response.ts";
import { requireSoundRun } from "./rules.ts";

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
	answer: (request, given) => {
		requireSoundRun(request, given);
		const { fill, filled } = filling();
		const ofPlant: Assumed[] = [];
		const plan = testRunPlan(request, given, fill, (assumed) => ofPlant.push(...assumed));
		const report = testRunReport(plan.run, plan.drawing, plan.elevation);
		return {
			...wireTestRun(request, plan, report),
			assumed: [...defaultsTaken(TestRunRequest, given, request), ...ofPlant, ...filled],
		};
	},
});
