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
import { ANSWERS, type SensitivityPlan } from "./plan.ts";

const MOST_DAYS = 430; // that the ranges of all improvements work out

/** A day and what its improvements gain. */
interface Ranked {
	readonly day: DayWithRange;
	readonly found: readonly Improvement[];
	readonly ranges: ReadonlyMap<ImprovementId, GainRange> | undefined; // where they are wanted
	readonly days: number; // that were marched
}

export function ranked(plan: SensitivityPlan, { settings }: Means): Ranked {
	const stated = dayCaseOf(plan);
	const day = dayWithRange(plan.range, {
		stated,
		outcome: () => warmUpDay(plan.plant, plan.weather, plan.task),
		requireSpare: (steps) => rangeWithin(settings.computingTime, MOST_DAYS, steps),
	});
	const by = ANSWERS[plan.rankedBy];
	const found = daySensitivity(stated, day.outcome, plan.steps, by);
	const gains = day.ranged && rangedGains(day.ranged.day, found, day.ranged.spreads, by);
	const improved = found.filter((one) => one.outcome === "gains").length;
	const days = (day.range?.days ?? 1) + improved + (gains?.days ?? 0);
	return { day, found, ranges: gains?.ranges, days };
}
