import type { DayAir, Gain, Steps } from "../../../src/index.ts";
import { dayAir } from "../../parts/day-air.ts";
import { type DayDesigns, type DayPlan, dayPlan } from "../../parts/day-plan.ts";
import { type RangePlan, rangePlan } from "../../parts/range.ts";
import { Spreads } from "../../parts/spread.ts";
import type { Completed } from "../../wire/defaults.ts";
import { toSi } from "../../wire/units.ts";
import type { Prices, Ranking, SensitivityRequest } from "./request.ts";
import { coreSteps } from "./steps.ts";

/** The core quantity that each ranking uses. */
export const RANKED_QUANTITIES = {
	litres: "usableVolume",
	minutes: "timeToTarget",
	temperature: "endTemperature",
	heat: "toWater",
} as const satisfies Record<Ranking, keyof Gain["gains"]>;

/** A day, with the steps, ranking and prices of its improvements. */
export interface SensitivityPlan extends DayPlan {
	readonly range: RangePlan<Spreads> | undefined;
	readonly steps: Steps;
	readonly rankedBy: Ranking;
	readonly prices: Prices | undefined;
	readonly air: DayAir;
}

const SERIES_STEP = toSi.minutes(15); // [s] of a series that is not returned

/** @param sent  the raw request */
export function sensitivityPlan(
	request: SensitivityRequest,
	designs: DayDesigns,
	sent: unknown,
): Completed<SensitivityPlan> {
	const { value: day, assumed } = dayPlan(request, SERIES_STEP, designs);
	return {
		value: {
			...day,
			range: rangePlan(request, sent, Spreads),
			steps: coreSteps(request.steps, request.loop.pump),
			rankedBy: request.rankedBy,
			prices: request.prices,
			air: dayAir(request.sky, sent),
		},
		assumed,
	};
}
