import { type InstantCase, instantValues } from "./instant-case.ts";
import type { InstantSpreads } from "./instant-changes.ts";
import { instantInputs } from "./instant-inputs.ts";
import type { Answer } from "./question.ts";
import { answerRanges, type RangeReport } from "./range.ts";

/** Ranges of flow and power of an instant heater under one sun, and of the aperture for a wanted flow.
 *  Cost  at most 40 steady states and as many searches for an aperture: less than the rows of one day */
export function rangedInstant(stated: InstantCase, spreads: InstantSpreads): RangeReport {
	const steady = ["flowing", "belowLimit"];
	const needed: readonly Answer[] =
		stated.wantedFlow === undefined ? [] : [{ name: "neededAperture", margins: ["found"] }];
	return answerRanges({
		stated,
		central: instantValues(stated),
		inputs: instantInputs(stated, spreads),
		values: instantValues,
		answers: [{ name: "flow", margins: steady }, { name: "power", margins: steady }, ...needed],
	});
}
