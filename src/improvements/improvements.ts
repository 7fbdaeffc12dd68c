import type { DayOutcome } from "../plant/outcome.ts";
import type { DayCase } from "../uncertainty/day-case.ts";
import type { Changed } from "./changed.ts";
import {
	dampened,
	fasterPump,
	isWet,
	laggedPump,
	laggedReturn,
	laggedSupply,
	laggedTank,
	longerCoil,
	shorterPipes,
} from "./loop-changes.ts";
import { largerAperture, newMirror, truerMirror, washedMirror } from "./mirror-changes.ts";
import { betterAperture, coated, glazed } from "./receiver-changes.ts";
import type { ImprovementId, Steps } from "./steps.ts";

/** The case with one improvement made.
 *  @param outcome  of the day as it stands */
export function improved(of: DayCase, id: ImprovementId, steps: Steps, outcome: DayOutcome): Changed {
	switch (id) {
		case "aperture":
			return largerAperture(of, steps.aperture);
		case "reflectance":
			return newMirror(of, steps.reflectance);
		case "cleaning":
			return washedMirror(of, steps.cleaning);
		case "slopeError":
			return truerMirror(of, steps.slopeError);
		case "receiverAperture":
			return betterAperture(of, steps.receiverAperture, outcome);
		case "selectiveCoating":
			return coated(of, steps.selectiveCoating);
		case "glazing":
			return glazed(of, steps.glazing);
		case "supplyLagging":
			return laggedSupply(of, steps.supplyLagging);
		case "returnLagging":
			return laggedReturn(of, steps.returnLagging);
		case "pumpLagging":
			return laggedPump(of, steps.pumpLagging);
		case "tankLagging":
			return laggedTank(of, steps.tankLagging);
		case "dryLagging":
			return isWet(of) ? dampened(of, 0) : "alreadySo";
		case "flow":
			return fasterPump(of, steps.flow);
		case "coilLength":
			return longerCoil(of, steps.coilLength);
		case "shorterPipes":
			return shorterPipes(of, steps.shorterPipes);
		default:
			return id satisfies never;
	}
}

/** What the case would come to without care that is taken now, whose worth is what is then not lost; undefined where no such care is.
 *  Dry insulation is the one such thing: it is kept dry. */
export function neglected(of: DayCase, id: ImprovementId, steps: Steps): DayCase | undefined {
	return id === "dryLagging" && !isWet(of) ? dampened(of, steps.dryLagging) : undefined;
}
