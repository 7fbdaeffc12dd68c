import type { DayOutcome } from "../plant/outcome.ts";
import { answersOfDay, dayValues } from "./day-answers.ts";
import type { DayCase, dayOf } from "./day-case.ts";
import { dayInputs } from "./day-inputs.ts";
import type { DaySpreads } from "./day-spreads.ts";
import { type RangeReport, reportOf, type Study, studied } from "./range.ts";

/** A day, and between what its answers lie. */
export interface RangedDay {
	readonly outcome: DayOutcome; // of the day as stated
	readonly range: RangeReport;
	readonly study: Study<DayCase>; // what the range was found from
}

/** The day as stated and the ranges of its answers by what is not known exactly; `answerRanges` says what it costs.
 *  @param dayOfCase  one march, `dayOf` */
export function rangedDay(stated: DayCase, spreads: DaySpreads, dayOfCase: typeof dayOf): RangedDay {
	let outcome: DayOutcome | undefined;
	const study = studied<DayCase>({
		stated,
		inputs: dayInputs(stated, spreads),
		answers: answersOfDay(stated.plant.tank.startTemperatures.length),
		values: (of) => {
			const day = dayOfCase(of);
			outcome ??= day; // the stated case comes first
			return dayValues(of.plant, of.task, day);
		},
	});
	return { outcome: outcome!, range: reportOf(study), study };
}
