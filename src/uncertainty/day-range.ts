import type { DayOutcome } from "../plant/outcome.ts";
import { answersOfDay, dayValues } from "./day-answers.ts";
import { type DayCase, dayOf } from "./day-case.ts";
import { dayInputs } from "./day-inputs.ts";
import type { DaySpreads } from "./day-spreads.ts";
import type { Values } from "./question.ts";
import { type RangeReport, reportOf, type Study, studyOf } from "./range.ts";

/** Ranges of a day's answers. */
export interface RangedDay {
	readonly range: RangeReport;
	readonly study: Study<DayCase>; // data of the range
}

/** The ranges of a day's answers from its uncertain inputs; cost: see `answerRanges`.
 *  @param outcome  of the day as requested */
export function rangedDay(stated: DayCase, outcome: DayOutcome, spreads: DaySpreads): RangedDay {
	const study = studyOf<DayCase>({
		stated,
		central: dayValues(stated.plant, stated.task, outcome),
		inputs: dayInputs(stated, spreads),
		answers: answersOfDay(stated.plant.tank.startTemperatures.length),
		values: valuesOfCase,
	});
	return { range: reportOf(study), study };
}

/** Answers and margins of a case: one simulation. */
export function valuesOfCase(of: DayCase): Values {
	return dayValues(of.plant, of.task, dayOf(of));
}
