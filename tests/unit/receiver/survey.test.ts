import { describe, expect, it } from "vitest";
import { fluidById } from "../../../src/fluids/catalogue.ts";
import { totalReceiverLoss } from "../../../src/receiver/loss-paths.ts";
import { receiverSurvey, type SurveyPlan } from "../../../src/receiver/survey.ts";
import { all, cavity, measured, tubes } from "./receivers.ts";

const plan: SurveyPlan = {
	fluid: fluidById("mineralOilVg32"),
	flow: 4 / 60_000,
	absorbed: 1200,
	ambient: 293.15,
	pressure: 101_325,
	fluidTemperatures: [313.15, 373.15, 433.15],
	winds: [0, 2, 6],
	altitudes: [0, 0.8, Math.PI / 2],
};

describe.each(all.map((receiver) => [receiver.kind, receiver] as const))("survey of a %s", (_, receiver) => {
	const rows = receiverSurvey(receiver, plan);

	it("has a row for each combination, temperatures innermost", () => {
		expect(rows).toHaveLength(27);
		expect(rows.slice(0, 4).map(({ fluidTemperature }) => fluidTemperature)).toEqual([
			313.15, 373.15, 433.15, 313.15,
		]);
		expect(rows[9]!.conditions).toMatchObject({ wind: 2, altitude: 0 });
	});

	it("gives absorbed heat to the fluid and to each path, and to nothing else", () => {
		for (const { balance } of rows)
			expect(Math.abs(plan.absorbed - balance.useful - totalReceiverLoss(balance.losses))).toBeLessThan(1e-8);
	});

	it("heats the fluid by what it gives it", () => {
		for (const { balance, leavingTemperature, fluidTemperature } of rows) {
			if (receiver.kind === "efficiencyLine") expect(leavingTemperature).toBe(fluidTemperature);
			else {
				const rate =
					plan.flow * plan.fluid.density(fluidTemperature) * plan.fluid.heatCapacity(fluidTemperature);
				expect(2 * rate * (leavingTemperature - fluidTemperature)).toBeCloseTo(balance.useful, 6);
			}
		}
	});
});

describe("survey", () => {
	it.each(tubes.map((receiver) => [receiver.kind, receiver] as const))(
		"of a %s loses more in more wind",
		(_, receiver) => {
			const losses = receiverSurvey(receiver, { ...plan, winds: [0, 0.5, 1, 2, 4, 8], altitudes: [0.8] });
			for (let i = 3; i < losses.length; i++)
				expect(totalReceiverLoss(losses[i]!.balance.losses)).toBeGreaterThan(
					totalReceiverLoss(losses[i - 3]!.balance.losses),
				);
		},
	);

	it("tells what a cavity convects by the other model, and of no other receiver", () => {
		const still = { ...plan, winds: [0], altitudes: [0, Math.PI / 4] };
		for (const { balance, convectedByOtherModel } of receiverSurvey(cavity, still)) {
			expect(convectedByOtherModel!).toBeLessThan(balance.losses.convected);
			expect(convectedByOtherModel!).toBeGreaterThan(0.3 * balance.losses.convected);
		}
		expect(receiverSurvey(measured, still)[0]!.convectedByOtherModel).toBeUndefined();
	});
});
