import { DomainError } from "../errors.ts";
import type { DayOutcome } from "../plant/outcome.ts";
import type { Task } from "../plant/plant.ts";
import { type DayAnswer, type DayAnswers, dayAnswers } from "../uncertainty/day-answers.ts";
import { type DayCase, dayOf } from "../uncertainty/day-case.ts";
import type { Idle } from "./changed.ts";
import { improvedCase, neglectedCase } from "./improvements.ts";
import { IMPROVEMENTS, type ImprovementId, type Steps } from "./steps.ts";

/** Worth of an improvement. */
export interface Worth {
	readonly gains: DayAnswers; // positive where it improves: saved seconds, gained kelvins, cubic metres and joules; NaN where either day lacks the answer
	readonly reaches: "both" | "onlyWith" | "onlyWithout" | "neither"; // whether the target is reached
}

/** An improvement with a computed day; it worsens the plant where a gain is negative. */
export interface Gain extends Worth {
	readonly outcome: "gains";
	readonly id: ImprovementId;
	readonly how: "made" | "kept"; // kept: the gain is the loss avoided by not neglecting it
	readonly of: DayCase; // with the improvement, or neglected
	readonly day: DayOutcome; // of that case
}

/** One improvement and its worth. */
export type Improvement =
	| Gain
	| { readonly outcome: "idle"; readonly id: ImprovementId; readonly why: Idle }
	| {
			readonly outcome: "refused"; // outside the range of the models
			readonly id: ImprovementId;
			readonly error: DomainError;
			readonly of: DayCase | undefined; // undefined where the change itself failed
	  };

/** Worth of each possible improvement on a day, in descending order.
 *  Each is made alone and by one step; small steps are additive, large ones overlap. An error in one does not affect the others.
 *  Cost  one simulation each in addition to the unchanged day: at most 16
 *  @param base      the unchanged day
 *  @param rankedBy  the answer that ranks them; heat replaces time where the target is not reached both with and without */
export function daySensitivity(
	stated: DayCase,
	base: DayOutcome,
	steps: Steps,
	rankedBy: DayAnswer,
): readonly Improvement[] {
	const found = IMPROVEMENTS.map((id) => improvement(stated, base, id, steps));
	return found.sort((a, b) => worthOrder(a, b, rankedBy));
}

function improvement(stated: DayCase, base: DayOutcome, id: ImprovementId, steps: Steps): Improvement {
	let of: DayCase | undefined;
	try {
		of = neglectedCase(stated, id, steps);
		const how = of === undefined ? "made" : "kept";
		if (of === undefined) {
			const changed = improvedCase(stated, id, steps, base);
			if (typeof changed === "string") return { outcome: "idle", id, why: changed };
			of = changed;
		}
		const day = dayOf(of);
		const worth = how === "made" ? worthOf(base, day, stated.task) : worthOf(day, base, stated.task);
		return { outcome: "gains", id, how, ...worth, of, day };
	} catch (error) {
		if (error instanceof DomainError) return { outcome: "refused", id, error, of };
		throw error;
	}
}

function worthOf(without: DayOutcome, withIt: DayOutcome, task: Task): Worth {
	return worthBetween(dayAnswers(without, task), dayAnswers(withIt, task));
}

/** Worth of the difference between two days' answers. */
export function worthBetween(without: DayAnswers, withIt: DayAnswers): Worth {
	const [reachedWithout, reachedWith] = [without, withIt].map((day) => !Number.isNaN(day.timeToTarget));
	const onlyOne = reachedWith ? "onlyWith" : "onlyWithout";
	return {
		gains: {
			timeToTarget: without.timeToTarget - withIt.timeToTarget,
			endTemperature: withIt.endTemperature - without.endTemperature,
			usableVolume: withIt.usableVolume - without.usableVolume,
			toWater: withIt.toWater - without.toWater,
		},
		reaches: reachedWith !== reachedWithout ? onlyOne : reachedWith ? "both" : "neither",
	};
}

/** Negative where a precedes b: gains by their worth, then idle improvements, then errors. */
export function worthOrder(a: Improvement, b: Improvement, by: DayAnswer): number {
	if (a.outcome === "gains" && b.outcome === "gains") return orderOfWorth(a, b, by);
	return LISTED[a.outcome] - LISTED[b.outcome];
}

/** Negative where a is worth more than b: first by reaching the target, then by the given answer, then by heat. */
export function orderOfWorth(a: Worth, b: Worth, by: DayAnswer): number {
	const byReach = by === "timeToTarget" ? REACH[b.reaches] - REACH[a.reaches] : 0;
	const byAnswer = b.gains[by] - a.gains[by];
	return byReach || (Number.isNaN(byAnswer) ? 0 : byAnswer) || b.gains.toWater - a.gains.toWater;
}

const LISTED = { gains: 0, idle: 1, refused: 2 } as const;
const REACH = { onlyWith: 1, both: 0, neither: 0, onlyWithout: -1 } as const;
