import { DomainError } from "../errors.ts";
import { latinHypercube } from "../numeric/latin-hypercube.ts";
import type { DayAnswer } from "../uncertainty/day-answers.ts";
import type { DayCase, dayOf } from "../uncertainty/day-case.ts";
import type { RangedDay } from "../uncertainty/day-range.ts";
import type { DaySpreads } from "../uncertainty/day-spreads.ts";
import type { Values } from "../uncertainty/question.ts";
import { type AnswerRange, SEED, type Study, sampled, TAIL } from "../uncertainty/range.ts";
import { renewedBy, scoreCount, withRenewed } from "./gain-inputs.ts";
import { shareAhead } from "./gain-order.ts";
import { type Basis, type GainStudy, gainStudy } from "./gain-range.ts";
import type { Gain, Improvement, Worth } from "./sensitivity.ts";
import type { ImprovementId } from "./steps.ts";

/** Between what the gains of an improvement lie, by what is not known exactly of the plant. */
export type GainRange =
	| {
			readonly outcome: "ranged";
			readonly ranges: readonly (AnswerRange & { readonly name: DayAnswer })[];
			readonly reaches: Readonly<Record<Worth["reaches"], number>>; // share of plants in which the target is reached so
			readonly renewed: keyof DaySpreads | undefined; // the input that it renews
			readonly ahead: Ahead | undefined; // undefined of the last
	  }
	| { readonly outcome: "refused"; readonly error: DomainError }; // some plant within the spreads is beyond the models

/** Whether an improvement is worth more than the next in the list. */
export interface Ahead {
	readonly share: number; // of plants in which it is
	readonly order: "certain" | "uncertain"; // certain where no more plants say otherwise than a range leaves out at one end
}

const MANY = 400; // plants that two sums of bends are compared in

/** Ranges of the gains of ranked improvements, plant and improved plant drawn together.
 *  Cost    12 marches an improvement where all is propagated, some 28 where the plant as it stands needed a sample, 40 where only
 *          the improved one does
 *  Error   against a Latin hypercube of 500: each end within 15 % of the width   tests/unit/improvements/ranged-gains.test.ts
 *  @param found      as `daySensitivity` ranked them     @param rankedBy  the answer that they were ranked by
 *  @param dayOfCase  one march, `dayOf` */
export function rangedGains(
	{ study }: RangedDay,
	found: readonly Improvement[],
	spreads: DaySpreads,
	rankedBy: DayAnswer,
	dayOfCase: typeof dayOf,
): ReadonlyMap<ImprovementId, GainRange> {
	const basis: Basis = { study, scores: withRenewed(study.scores), rows: sampledOnce(study) };
	const many = latinHypercube(SEED, MANY, scoreCount(study.question.inputs));
	const gains = found.filter((one): one is Gain => one.outcome === "gains");
	const studies = gains.map((gain) => refusable(() => gainStudy(basis, gain, spreads, dayOfCase)));
	return new Map(
		studies.map((one, i): [ImprovementId, GainRange] => {
			const { id } = gains[i]!;
			if (one instanceof DomainError) return [id, { outcome: "refused", error: one }];
			const next = studies[i + 1];
			const share =
				next === undefined || next instanceof DomainError
					? undefined
					: shareAhead(one, next, rankedBy, basis.scores, many);
			return [id, rangeOf(one, share)];
		}),
	);
}

function rangeOf(study: GainStudy, share: number | undefined): GainRange {
	const worths: readonly Worth[] = study.rows.length > 0 ? study.rows : [study.gain];
	const shareOf = (reaches: Worth["reaches"]) =>
		worths.filter((worth) => worth.reaches === reaches).length / worths.length;
	return {
		outcome: "ranged",
		ranges: study.ranges,
		reaches: {
			both: shareOf("both"),
			onlyWith: shareOf("onlyWith"),
			onlyWithout: shareOf("onlyWithout"),
			neither: shareOf("neither"),
		},
		renewed: renewedBy(study.gain.id),
		ahead: share === undefined ? undefined : { share, order: share >= 1 - TAIL ? "certain" : "uncertain" },
	};
}

/** The plant's own sample, worked out when it is first wanted. */
function sampledOnce({ question, scores, rows }: Study<DayCase>): () => readonly Values[] {
	let found = rows;
	return () => {
		if (found.length === 0) found = sampled(question, scores);
		return found;
	};
}

function refusable(study: () => GainStudy): GainStudy | DomainError {
	try {
		return study();
	} catch (error) {
		if (error instanceof DomainError) return error;
		throw error;
	}
}
