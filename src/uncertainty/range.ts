import { latinHypercube } from "../numeric/latin-hypercube.ts";
import { type Bend, quantile, type Spread, spreadOf } from "../numeric/moments.ts";
import type { Answer, Question, Values } from "./question.ts";
import { type Response, response } from "./response.ts";

/** Between what an answer lies, by what is not known exactly. */
export interface AnswerRange {
	readonly name: string;
	readonly low: number; // NaN where more than the share left out below never comes to it
	readonly central: number; // of the case as stated; NaN where it has no such answer
	readonly high: number; // NaN where more than the share left out above never comes to it
	readonly method: "propagation" | "sample";
	readonly answered: number; // share of the plants that come to an answer, 0–1
}

/** What one input alone does to each answer. */
export interface InputEffect {
	readonly input: string;
	readonly effects: Values; // change of the answers by one standard deviation up, as the mean of both sides where both were tried
}

export interface RangeReport {
	readonly coverage: number; // share of plants as stated that fall between low and high
	readonly ranges: readonly AnswerRange[];
	readonly effects: readonly InputEffect[];
	readonly cases: number; // worked out
}

export const COVERAGE = 0.9;
export const TAIL = (1 - COVERAGE) / 2;
const FAR_TAIL = 0.01; // a margin that so few plants pass does not bend the range
const MOST_BENT = 0.2; // share of variance beyond first order; above it the sample is used. Chosen: at 0.2 the low and high differ by a tenth of the width from the sample's
const MOST_PROPAGATED = 13; // cases worked out without a sample
const MOST_CASES = 40; // with a sample
export const SEED = 20_260; // any number; fixed, so that one question has one answer

/** What ranges are found from. */
export interface Study<Case> {
	readonly question: Question<Case>;
	readonly found: Response;
	readonly scores: readonly Float64Array[]; // of the sample [rows][inputs], whether it was worked out or not
	readonly rows: readonly Values[]; // the sample; none where propagation answers everything
}

/** Low and high of each answer by what its inputs leave open.
 *  Propagation: each input is moved alone by a standard deviation up, the strongest also down; the cumulants of their sums give the
 *  quantiles. Where an answer comes near a place where it bends sharply, or bends too much anyway, a seeded Latin hypercube of
 *  all inputs at once replaces it.
 *  Cost    at most 13 cases, 40 where it samples
 *  Error   against Latin hypercubes of 500, propagated ends within 15 % of the width   tests/unit/uncertainty/day-range.test.ts; sampled ones
 *          within a tenth (standard deviation), so that five plants of a hundred more or fewer fall inside than claimed; what happens to
 *          one plant in twenty, as oil that reaches its limit, so few rows can miss
 *  Source  ISO/IEC Guide 98-3 (GUM): sum of variances, extended here to second order; its Supplement 1: sampling (from memory) */
export function answerRanges<Case>(question: Question<Case>): RangeReport {
	return reportOf(studied(question));
}

/** Works out all cases that the ranges of a question need. */
export function studied<Case>(question: Question<Case>): Study<Case> {
	const found = response(question, { most: MOST_PROPAGATED });
	const open = question.answers.some((answer) => propagated(found, answer) === undefined);
	const scores = latinHypercube(SEED, MOST_CASES - found.marched.length, question.inputs.length);
	return { question, found, scores, rows: open ? sampled(question, scores) : [] };
}

/** The ranges that a study comes to. */
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
				question.answers.map((answer) => [answer.name, bendsOf(found, answer.name)[input]!.first]),
			),
		})),
		cases: found.marched.length + rows.length,
	};
}

/** What each input does to a value. */
export function bendsOf(found: Response, name: string): readonly Bend[] {
	const at = found.names.indexOf(name);
	return found.bends.map((bends) => bends[at]!);
}

/** The range by propagation; undefined where the answer is not near enough to a smooth sum. */
function propagated(found: Response, { name, margins }: Answer): AnswerRange | undefined {
	const central = found.central[name]!;
	if (!margins.every((margin) => keepsItsSide(found, margin))) return undefined;
	if (found.marched.every((values) => Number.isNaN(values[name]))) return unanswered(name);
	return rangeOfBends(name, central, bendsOf(found, name));
}

/** The range of an answer that no plant comes to. */
export function unanswered(name: string): AnswerRange {
	return { name, low: Number.NaN, central: Number.NaN, high: Number.NaN, method: "propagation", answered: 0 };
}

/** The range of an answer that its inputs move so; undefined where it bends too much. */
export function rangeOfBends(name: string, central: number, bends: readonly Bend[]): AnswerRange | undefined {
	const spread = spreadOf(central, bends);
	if (!(spread.bent <= MOST_BENT)) return undefined; // NaN, of an answer that some cases lack, is refused too
	const [low, high] = [quantile(spread, TAIL), quantile(spread, 1 - TAIL)];
	return { name, low, central, high, method: "propagation", answered: 1 };
}

/** Whether a margin has one sign in every case tried, and is not likely to change it in any other. */
export function keepsItsSide(found: Response, name: string): boolean {
	const side = Math.sign(found.central[name]!);
	if (!found.marched.every((values) => Math.sign(values[name]!) === side)) return false;
	const spread: Spread = spreadOf(found.central[name]!, bendsOf(found, name));
	const nearest = quantile(spread, side > 0 ? FAR_TAIL : 1 - FAR_TAIL);
	return Math.sign(nearest) === side;
}

/** Values of cases in which every input is drawn.
 *  @param rows  scores [rows][inputs] */
export function sampled<Case>(
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

/** Quantile of a sample by place (n + ⅓)·p + ⅓, on a straight line between neighbours. In a Latin hypercube p·n + ½ would be right for an
 *  answer that follows one input alone; where several share in it, that leaves out 1.4 more in a hundred than it should.
 *  Those without an answer rank above all that have one.
 *  Source  Hyndman & Fan, The American Statistician 50 (1996) 361–365, definition 8, as scipy documents it
 *  Check   share of a sum that falls inside, over many seeds   tests/unit/uncertainty/range.test.ts */
export function orderStatistic(sorted: readonly number[], count: number, probability: number): number {
	const place = Math.min(Math.max((count + 1 / 3) * probability - 2 / 3, 0), count - 1);
	const below = Math.floor(place);
	const low = sorted[below] ?? Number.NaN;
	const last = sorted.length >= probability * count ? low : Number.NaN; // few enough lack an answer: the last that has one
	return low + (place - below) * ((sorted[below + 1] ?? last) - low);
}
