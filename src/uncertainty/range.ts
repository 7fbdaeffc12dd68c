import { latinHypercube } from "../numeric/latin-hypercube.ts";
import { type Effect, quantile, type Spread, spreadOf } from "../numeric/moments.ts";
import type { Answer, Question, Values } from "./question.ts";
import { type Response, response } from "./response.ts";

/** Range of an answer from its uncertain inputs. */
export interface AnswerRange {
	readonly name: string;
	readonly low: number; // NaN where more plants than the lower tail have no answer
	readonly central: number; // of the stated case; NaN where it has no such answer
	readonly high: number; // NaN where more plants than the upper tail have no answer
	readonly method: "propagation" | "sample";
	readonly answered: number; // share of the plants that have an answer, 0–1
}

/** Effect of one input alone on each answer. */
export interface InputEffect {
	readonly input: string;
	readonly effects: Values; // change of the answers by one standard deviation up, as the mean of both sides where both were computed
}

export interface RangeReport {
	readonly coverage: number; // share of plants between low and high
	readonly ranges: readonly AnswerRange[];
	readonly effects: readonly InputEffect[];
	readonly cases: number; // number of computed cases
}

export const COVERAGE = 0.9;
export const TAIL = (1 - COVERAGE) / 2;
const FAR_TAIL = 0.01; // a margin that fewer plants pass does not affect the range
const MOST_BENT = 0.2; // share of variance beyond first order; above it the sample is used. Chosen: at 0.2 low and high differ from those of a sample by a tenth of the width
const MOST_PROPAGATED = 13; // cases computed without a sample
const MOST_CASES = 40; // with a sample
export const SEED = 20_260; // arbitrary but fixed, so that a request always has the same answer

/** Data from which ranges are computed. */
export interface Study<Case> {
	readonly question: Question<Case>;
	readonly found: Response;
	readonly scores: readonly Float64Array[]; // of the sample [rows][inputs], whether it was computed or not
	readonly rows: readonly Values[]; // the sample; empty where propagation is sufficient
}

/** Low and high of each answer from its uncertain inputs.
 *  Propagation: each input is changed alone by a standard deviation up, the strongest also down; the cumulants of their sums give the
 *  quantiles. Where an answer is close to a point where it is not smooth, or too nonlinear, a seeded Latin hypercube of
 *  all inputs at once replaces it.
 *  Cost    at most 13 cases, 40 with a sample
 *  Error   against Latin hypercubes of 500, propagated limits within 15 % of the width   tests/unit/uncertainty/day-range.test.ts; sampled ones
 *          within a tenth (standard deviation): five plants in a hundred more or fewer are inside than stated. A sample this small can miss
 *          an event of one plant in twenty, such as oil that reaches its limit
 *  Source  ISO/IEC Guide 98-3 (GUM): sum of variances, extended here to second order; its Supplement 1: sampling (from memory) */
export function answerRanges<Case>(question: Question<Case>): RangeReport {
	return reportOf(studyOf(question));
}

/** Computes all cases for the ranges of a question. */
export function studyOf<Case>(question: Question<Case>): Study<Case> {
	const found = response(question, { most: MOST_PROPAGATED });
	const open = question.answers.some((answer) => propagated(found, answer) === undefined);
	const scores = latinHypercube(SEED, MOST_CASES - found.computed.length, question.inputs.length);
	return { question, found, scores, rows: open ? sampleValues(question, scores) : [] };
}

/** The ranges from a study. */
export function reportOf<Case>({ question, found, rows }: Study<Case>): RangeReport {
	const ranges = question.answers.map(
		(answer) => propagated(found, answer) ?? sampleRange(answer.name, found.central, rows),
	);
	return {
		coverage: COVERAGE,
		ranges,
		effects: question.inputs.map(({ name }, input) => ({
			input: name,
			effects: Object.fromEntries(
				question.answers.map((answer) => [answer.name, effectsOf(found, answer.name)[input]!.first]),
			),
		})),
		cases: found.computed.length + rows.length,
	};
}

/** Effect of each input on a value. */
export function effectsOf(found: Response, name: string): readonly Effect[] {
	const at = found.names.indexOf(name);
	return found.effects.map((effects) => effects[at]!);
}

/** The range by propagation; undefined where the answer is not sufficiently smooth. */
function propagated(found: Response, { name, margins }: Answer): AnswerRange | undefined {
	const central = found.central[name]!;
	if (!margins.every((margin) => keepsItsSign(found, margin))) return undefined;
	if (found.computed.every((values) => Number.isNaN(values[name]))) return unanswered(name);
	return rangeOfEffects(name, central, effectsOf(found, name));
}

/** The range of an answer that no plant has. */
export function unanswered(name: string): AnswerRange {
	return { name, low: Number.NaN, central: Number.NaN, high: Number.NaN, method: "propagation", answered: 0 };
}

/** The range of an answer from the effects of its inputs; undefined where it is too nonlinear. */
export function rangeOfEffects(
	name: string,
	central: number,
	effects: readonly Effect[],
): AnswerRange | undefined {
	const spread = spreadOf(central, effects);
	if (!(spread.nonlinear <= MOST_BENT)) return undefined; // NaN, for an answer that some cases lack, is rejected too
	const [low, high] = [quantile(spread, TAIL), quantile(spread, 1 - TAIL)];
	return { name, low, central, high, method: "propagation", answered: 1 };
}

/** Whether a margin has the same sign in all computed cases and is unlikely to change it in others. */
export function keepsItsSign(found: Response, name: string): boolean {
	const side = Math.sign(found.central[name]!);
	if (!found.computed.every((values) => Math.sign(values[name]!) === side)) return false;
	const spread: Spread = spreadOf(found.central[name]!, effectsOf(found, name));
	const nearest = quantile(spread, side > 0 ? FAR_TAIL : 1 - FAR_TAIL);
	return Math.sign(nearest) === side;
}

/** Values of cases with random scores of all inputs.
 *  @param rows  scores [rows][inputs] */
export function sampleValues<Case>(
	{ stated, inputs, values }: Question<Case>,
	rows: readonly ArrayLike<number>[],
): readonly Values[] {
	return rows.map((scores) => values(inputs.reduce((made, input, i) => input.at(made, scores[i]!), stated)));
}

function sampleRange(name: string, central: Values, rows: readonly Values[]): AnswerRange {
	const found = rows.map((values) => values[name]!);
	const answered = found.filter((value) => !Number.isNaN(value)).sort((a, b) => a - b);
	const at = (probability: number) => orderStatistic(answered, found.length, probability);
	return {
		name,
		low: at(TAIL),
		central: central[name]!,
		high: at(1 - TAIL),
		method: "sample",
		answered: answered.length / found.length,
	};
}

/** Quantile of a sample at position (n + ⅓)·p + ⅓, with linear interpolation. In a Latin hypercube p·n + ½ would be exact for an
 *  answer that depends on one input; where it depends on several, 1.4 too many in a hundred would be outside.
 *  Plants without an answer rank above all others.
 *  Source  Hyndman & Fan, The American Statistician 50 (1996) 361–365, definition 8, as documented in scipy
 *  Check   share of a sum inside the range, over many seeds   tests/unit/uncertainty/range.test.ts */
export function orderStatistic(sorted: readonly number[], count: number, probability: number): number {
	const position = Math.min(Math.max((count + 1 / 3) * probability - 2 / 3, 0), count - 1);
	const below = Math.floor(position);
	const low = sorted[below] ?? Number.NaN;
	const last = sorted.length >= probability * count ? low : Number.NaN; // where few enough lack an answer: the last one with an answer
	return low + (position - below) * ((sorted[below + 1] ?? last) - low);
}
