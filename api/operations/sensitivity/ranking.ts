import {
	daySensitivity,
	type GainRange,
	type Improvement,
	type ImprovementId,
	rangedGains,
	warmUpDay,
} from "../../../src/index.ts";
import { dayCaseOf } from "../../parts/day-plan.ts";
import { type DayWithRange, dayWithRange } from "../../parts/range.ts";
import { rangeWithin } from "../cost.ts";
import type { Means } from "../operation.ts";
import { RANKED_QUANTITIES, type SensitivityPlan } from "./plan.ts";

const MOST_DAYS = 430; // computed for the ranges of all improvements at most

/** A day and the gains of its improvements. */
interface Ranking {
	readonly day: DayWithRange;
	readonly found: readonly Improvement[];
	readonly ranges: ReadonlyMap<ImprovementId, GainRange> | undefined; // where requested
	readonly days: number; // simulated
}

export function ranking(plan: SensitivityPlan, { settings }: Means): Ranking {
	const stated = dayCaseOf(plan);
	const day = dayWithRange(plan.range, {
		stated,
		outcome: () => warmUpDay(plan.plant, plan.weather, plan.task),
		requireSpare: (steps) => rangeWithin(settings.computingTime, MOST_DAYS, steps),
	});
	const by = RANKED_QUANTITIES[plan.rankedBy];
	const found = daySensitivity(stated, day.outcome, plan.steps, by);
	const gains = day.ranged && rangedGains(day.ranged.day, found, day.ranged.spreads, by);
	const improved = found.filter((one) => one.outcome === "gains").length;
	const days = (day.range?.days ?? 1) + improved + (gains?.days ?? 0);
	return { day, found, ranges: gains?.ranges, days };
}
