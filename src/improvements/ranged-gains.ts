import { DomainError } from "../errors.ts";
import { latinHypercube } from "../numeric/latin-hypercube.ts";
import type { DayAnswer } from "../uncertainty/day-answers.ts";
import type { DayCase } from "../uncertainty/day-case.ts";
import type { RangedDay } from "../uncertainty/day-range.ts";
import type { DaySpreads } from "../uncertainty/day-spreads.ts";
import type { Values } from "../uncertainty/question.ts";
import { type AnswerRange, SEED, type Study, sampleValues, TAIL } from "../uncertainty/range.ts";
import { renewedBy, scoreCount, withRenewed } from "./gain-inputs.ts";
import { shareAhead } from "./gain-order.ts";
import { type GainStudy, propagatedGains, sampledGains } from "./gain-range.ts";
import type { Gain, Improvement, Worth } from "./sensitivity.ts";
import type { ImprovementId } from "./steps.ts";

/** Ranges of the gains of an improvement from the uncertain inputs of the plant. */
export type GainRange =
	| {
			readonly outcome: "ranged";
			readonly ranges: readonly (AnswerRange & { readonly name: DayAnswer })[];
			readonly reaches: Readonly<Record<Worth["reaches"], number>>; // share of plants by whether the target is reached
			readonly renewed: keyof DaySpreads | undefined; // the input that it replaces
			readonly ahead: Ahead | undefined; // undefined for the last one
	  }
	| { readonly outcome: "refused"; readonly error: DomainError }; // a plant within the spreads is outside the range of the models

/** Whether an improvement is worth more than the next in the list. */
export interface Ahead {
	readonly share: number; // share of plants in which it is
	readonly order: "certain" | "uncertain"; // certain where the share of other plants is at most one tail of a range
}

/** The ranges of all gains, and their computing cost. */
export interface RangedGains {
	readonly ranges: ReadonlyMap<ImprovementId, GainRange>;
	readonly days: number; // number of computed days
}

const MANY = 400; // plants in which two sums of effects are compared

/** Ranges of the gains of ranked improvements, with the same scores for plant and improved plant.
 *  Cost    12 simulations per improvement with propagation alone, about 28 where the unchanged plant needed a sample, 40 where only
 *          the improved one does
 *  Error   against a Latin hypercube of 500: each limit within 15 % of the width   tests/unit/improvements/ranged-gains.test.ts
 *  @param found     ranked by `daySensitivity`     @param rankedBy  the answer that ranks them */
export function rangedGains(
	{ study }: RangedDay,
	found: readonly Improvement[],
	spreads: DaySpreads,
	rankedBy: DayAnswer,
): RangedGains {
	const gains = found.filter((one): one is Gain => one.outcome === "gains");
	const scores = withRenewed(study.scores);
	const { studies, days } = gainStudies(study, gains, spreads, scores);
	const many = latinHypercube(SEED, MANY, scoreCount(study.question.inputs));
	const ranges = studies.map((one, i): [ImprovementId, GainRange] => {
		const { id } = gains[i]!;
		if (one instanceof DomainError) return [id, { outcome: "refused", error: one }];
		const next = studies[i + 1];
		const share =
			next === undefined || next instanceof DomainError
				? undefined
				: shareAhead(one, next, rankedBy, scores, many);
		return [id, rangeOf(one, share)];
	});
	return { ranges: new Map(ranges), days };
}

/** Each gain by propagation, or by a sample where that is not sufficient; the sample of the plant is computed once, if needed. */
function gainStudies(
	study: Study<DayCase>,
	gains: readonly Gain[],
	spreads: DaySpreads,
	scores: readonly Float64Array[],
): { readonly studies: readonly (GainStudy | DomainError)[]; readonly days: number } {
	const propagated = gains.map((gain) => ifCovered(() => propagatedGains(study, gain, spreads)));
	const anyOpen = propagated.some((one) => !(one instanceof DomainError) && one.outcome === "open");
	const own = anyOpen ? ifCovered(() => ownSample(study)) : [];
	const studies = propagated.map((one) => {
		if (one instanceof DomainError) return one;
		if (one.outcome === "answered") return one.study;
		return own instanceof DomainError ? own : ifCovered(() => sampledGains({ scores, rows: own }, one));
	});
	const ownDays = own === study.rows || own instanceof DomainError ? 0 : own.length;
	const days = studies.reduce((sum, one) => sum + (one instanceof DomainError ? 0 : one.days), ownDays);
	return { studies, days };
}

function ownSample({ question, scores, rows }: Study<DayCase>): readonly Values[] {
	return rows.length > 0 ? rows : sampleValues(question, scores);
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

/** A result, or the error of a model. */
function ifCovered<T>(found: () => T): T | DomainError {
	try {
		return found();
	} catch (error) {
		if (error instanceof DomainError) return error;
		throw error;
	}
}
