import type { DayOutcome } from "../plant/outcome.ts";
import { answersOfDay, dayValues } from "./day-answers.ts";
import { type DayCase, dayOf } from "./day-case.ts";
import { dayInputs } from "./day-inputs.ts";
import type { DaySpreads } from "./day-spreads.ts";
import type { Values } from "./question.ts";
import { type RangeReport, reportOf, type Study, studied } from "./range.ts";

/** Between what a day's answers lie. */
export interface RangedDay {
	readonly range: RangeReport;
	readonly study: Study<DayCase>; // what the range was found from
}

/** The ranges of a day's answers by what is not known exactly; `answerRanges` says what it costs.
 *  @param outcome  of the day as stated */
export function rangedDay(stated: DayCase, outcome: DayOutcome, spreads: DaySpreads): RangedDay {
	const study = studied<DayCase>({
		stated,
		central: dayValues(stated.plant, stated.task, outcome),
		inputs: dayInputs(stated, spreads),
		answers: answersOfDay(stated.plant.tank.startTemperatures.length),
		values: valuesOfCase,
	});
	return { range: reportOf(study), study };
}

/** Answers and margins of a case: one march. */
export function valuesOfCase(of: DayCase): Values {
	return dayValues(of.plant, of.task, dayOf(of));
}
