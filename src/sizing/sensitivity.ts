import type { DayOutcome } from "../plant/outcome.ts";
import { type DayAnswer, type DayAnswers, dayAnswers } from "./day-answers.ts";
import type { DayCase, dayOf } from "./day-case.ts";
import { type Idle, improved, neglected } from "./improvements.ts";
import { IMPROVEMENTS, type ImprovementId, type Steps } from "./steps.ts";

/** One improvement and what it is worth. */
export type Improvement =
	| {
			readonly outcome: "gains"; // or loses: a gain may be negative
			readonly id: ImprovementId;
			readonly how: "made" | "kept"; // kept: the gain is what neglect would cost
			readonly gains: DayAnswers; // better is positive: seconds saved, kelvins, litres, joules won; NaN where either day lacks the answer
			readonly reaches: "both" | "onlyWith" | "onlyWithout" | "neither"; // whether the target is reached
			readonly of: DayCase; // with the improvement, or neglected
			readonly day: DayOutcome; // of that case
	  }
	| { readonly outcome: "idle"; readonly id: ImprovementId; readonly why: Idle };

/** What each improvement that a builder can make is worth on a day, the most worth first.
 *  Each is made alone and by one step; small steps add up, large ones overlap.
 *  Cost  one march each beside the day as it stands: at most 16
 *  @param base       the day as it stands
 *  @param rankedBy   the answer that ranks them; time falls back on heat where the target is not reached both with and without
 *  @param dayOfCase  one march, `dayOf` */
export function daySensitivity(
	stated: DayCase,
	base: DayOutcome,
	steps: Steps,
	rankedBy: DayAnswer,
	dayOfCase: typeof dayOf,
): readonly Improvement[] {
	const found = IMPROVEMENTS.map((id) => improvement(stated, base, id, steps, dayOfCase));
	return found.sort((a, b) => worthOrder(a, b, rankedBy));
}

function improvement(
	stated: DayCase,
	base: DayOutcome,
	id: ImprovementId,
	steps: Steps,
	dayOfCase: typeof dayOf,
): Improvement {
	const without = neglected(stated, id, steps);
	if (without !== undefined) {
		const day = dayOfCase(without);
		const gains = gained(dayAnswers(day, stated.task), dayAnswers(base, stated.task));
		return { outcome: "gains", id, how: "kept", gains, reaches: reaching(day, base), of: without, day };
	}
	const of = improved(stated, id, steps, base);
	if (typeof of === "string") return { outcome: "idle", id, why: of };
	const day = dayOfCase(of);
	const gains = gained(dayAnswers(base, stated.task), dayAnswers(day, stated.task));
	return { outcome: "gains", id, how: "made", gains, reaches: reaching(base, day), of, day };
}

function gained(without: DayAnswers, withIt: DayAnswers): DayAnswers {
	return {
		timeToTarget: without.timeToTarget - withIt.timeToTarget,
		endTemperature: withIt.endTemperature - without.endTemperature,
		usableVolume: withIt.usableVolume - without.usableVolume,
		toWater: withIt.toWater - without.toWater,
	};
}

function reaching(without: DayOutcome, withIt: DayOutcome) {
	if (withIt.reached) return without.reached ? "both" : "onlyWith";
	return without.reached ? "onlyWithout" : "neither";
}

/** Negative where a is worth more than b: what reaches the target first of all, then by the answer asked, then by heat; idle ones last. */
export function worthOrder(a: Improvement, b: Improvement, by: DayAnswer): number {
	if (a.outcome === "idle" || b.outcome === "idle")
		return Number(a.outcome === "idle") - Number(b.outcome === "idle");
	const byReach = by === "timeToTarget" ? REACH[b.reaches] - REACH[a.reaches] : 0;
	const byAnswer = b.gains[by] - a.gains[by];
	return byReach || (Number.isNaN(byAnswer) ? 0 : byAnswer) || b.gains.toWater - a.gains.toWater;
}

const REACH = { onlyWith: 1, both: 0, neither: 0, onlyWithout: -1 } as const;
