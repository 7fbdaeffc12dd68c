import type { DayOutcome } from "../plant/outcome.ts";
import type { DayCase } from "../uncertainty/day-case.ts";
import type { Changed } from "./changed.ts";
import {
	fasterPump,
	insulatedPump,
	insulatedReturn,
	insulatedSupply,
	insulatedTank,
	isWet,
	longerCoil,
	shorterPipes,
	withMoisture,
} from "./loop-changes.ts";
import { largerAperture, newMirror, truerMirror, washedMirror } from "./mirror-changes.ts";
import { betterAperture, withCoating, withPane } from "./receiver-changes.ts";
import type { ImprovementId, Steps } from "./steps.ts";

/** The case with one improvement made.
 *  @param outcome  of the unchanged day */
export function improvedCase(of: DayCase, id: ImprovementId, steps: Steps, outcome: DayOutcome): Changed {
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
			return withCoating(of, steps.selectiveCoating);
		case "glazing":
			return withPane(of, steps.glazing);
		case "supplyLagging":
			return insulatedSupply(of, steps.supplyLagging);
		case "returnLagging":
			return insulatedReturn(of, steps.returnLagging);
		case "pumpLagging":
			return insulatedPump(of, steps.pumpLagging);
		case "tankLagging":
			return insulatedTank(of, steps.tankLagging);
		case "dryLagging":
			return isWet(of) ? withMoisture(of, 0) : "alreadySo";
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

/** The case with a present advantage neglected, whose worth is the loss that it avoids; undefined where there is none.
 *  Dry insulation is the only such advantage. */
export function neglectedCase(of: DayCase, id: ImprovementId, steps: Steps): DayCase | undefined {
	return id === "dryLagging" && !isWet(of) ? withMoisture(of, steps.dryLagging) : undefined;
}
