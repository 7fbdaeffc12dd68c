import { type Bend, logarithmic } from "../numeric/moments.ts";
import { type DayAnswer, type DayAnswers, dayValues } from "../uncertainty/day-answers.ts";
import type { DayCase } from "../uncertainty/day-case.ts";
import { dayInputs } from "../uncertainty/day-inputs.ts";
import type { DaySpreads } from "../uncertainty/day-spreads.ts";
import type { Question, Values } from "../uncertainty/question.ts";
import {
	type AnswerRange,
	bendsOf,
	keepsItsSide,
	orderStatistic,
	rangeOfBends,
	type Study,
	sampled,
	TAIL,
	unanswered,
} from "../uncertainty/range.ts";
import { type Response, response } from "../uncertainty/response.ts";
import { columnsOf, scoreCount } from "./gain-inputs.ts";
import { type Gain, type Worth, worthBetween } from "./sensitivity.ts";

/** The plant as it stands in a sample, to hold gains against. */
export interface Basis {
	readonly scores: readonly Float64Array[]; // with those of what improvements renew [rows][scores]
	readonly rows: readonly Values[]; // the plant as it stands in it
}

type NamedRange = AnswerRange & { readonly name: DayAnswer };

/** What was found of one improvement's gains. */
export interface GainStudy {
	readonly gain: Gain;
	readonly ranges: readonly NamedRange[];
	readonly bends: Readonly<Record<DayAnswer, readonly Bend[]>> | undefined; // by score, where it was propagated
	readonly rows: readonly Worth[]; // in the sample, where one was needed
	readonly days: number; // worked out for it
}

/** Gains by propagation, or what of them it leaves to a sample. */
export type PropagatedGains =
	| { readonly outcome: "answered"; readonly study: GainStudy }
	| {
			readonly outcome: "open";
			readonly gain: Gain;
			readonly question: Question<DayCase>;
			readonly ranges: readonly (NamedRange | undefined)[]; // those found already
			readonly days: number;
	  };

const NAMES = ["timeToTarget", "endTemperature", "usableVolume", "toWater"] as const;

/** Between what an improvement's gains lie. Plant and improved plant err alike, so their bends are taken from each other before they
 *  are summed, and a sample (`sampledGains`) holds them against each other draw by draw.
 *  Cost  at most 12 marches by propagation; a sample takes as many as the plant's own, some 28, and stands in for the propagation
 *        wherever the plant itself needed one
 *  @param study  of the plant as it stands */
export function propagatedGains(study: Study<DayCase>, gain: Gain, spreads: DaySpreads): PropagatedGains {
	const question: Question<DayCase> = {
		...study.question,
		stated: gain.of,
		central: dayValues(gain.of.plant, gain.of.task, gain.day),
		inputs: dayInputs(gain.of, spreads),
	};
	if (study.rows.length > 0)
		return { outcome: "open", gain, question, ranges: NAMES.map(() => undefined), days: 0 };
	const found = response(question, { channels: study.found.bent });
	const days = found.marched.length - 1; // the improved day itself is known
	const bends = bendsOfGains(study, gain, question, found);
	const ranges = NAMES.map((name) => propagatedGain(study, gain, found, name, bends[name]));
	return ranges.every((range) => range !== undefined)
		? { outcome: "answered", study: { gain, ranges, bends, rows: [], days } }
		: { outcome: "open", gain, question, ranges, days };
}

function bendsOfGains(
	study: Study<DayCase>,
	{ id, how }: Gain,
	{ inputs }: Question<DayCase>,
	found: Response,
): Readonly<Record<DayAnswer, readonly Bend[]>> {
	const columns = columnsOf(id, inputs);
	const of = (name: DayAnswer): readonly Bend[] => {
		const sign = (name === "timeToTarget") === (how === "made") ? -1 : 1; // less time is a gain, and so is neglect avoided
		const bends = Array.from({ length: scoreCount(inputs) }, () => ({ first: 0, second: 0 }));
		const add = (column: number, { first, second }: Bend, by: number) => {
			bends[column]!.first += by * first;
			bends[column]!.second += by * second;
		};
		bendsOf(study.found, name).forEach((bend, i) => {
			add(i, bend, -sign);
		});
		bendsOf(found, name).forEach((bend, i) => {
			add(columns[i]!, bend, sign);
		});
		return bends;
	};
	return {
		timeToTarget: of("timeToTarget"),
		endTemperature: of("endTemperature"),
		usableVolume: of("usableVolume"),
		toWater: of("toWater"),
	};
}

/** The range of a gain by propagation; undefined where either plant comes near a sharp bend. */
function propagatedGain(
	study: Study<DayCase>,
	{ gains }: Gain,
	found: Response,
	name: DayAnswer,
	bends: readonly Bend[],
): NamedRange | undefined {
	const { margins } = study.question.answers.find((answer) => answer.name === name)!;
	const smooth = margins.every((margin) => keepsItsSide(study.found, margin) && keepsItsSide(found, margin));
	if (!smooth) return undefined;
	const never = ({ marched }: Response) => marched.every((values) => Number.isNaN(values[name]));
	const range = never(study.found) || never(found) ? unanswered(name) : multiplied(name, gains[name], bends);
	return range && { ...range, name };
}

/** The range of a gain that its inputs move so. Much of a gain goes in proportion to each of them, what insulation saves by the heat it
 *  keeps as by the hours it keeps it, so that their effects multiply as long as none alone brings the gain near nothing. */
function multiplied(name: DayAnswer, central: number, bends: readonly Bend[]): AnswerRange | undefined {
	const logs = logarithmic(central, bends);
	if (logs === undefined) return rangeOfBends(name, central, bends);
	const range = rangeOfBends(name, 0, logs);
	if (range === undefined) return undefined;
	const ends = [central * Math.exp(range.low), central * Math.exp(range.high)];
	return { ...range, low: Math.min(...ends), central, high: Math.max(...ends) };
}

/** What propagation left open, by a sample. */
export function sampledGains(
	basis: Basis,
	{ gain, question, ranges, days }: Extract<PropagatedGains, { outcome: "open" }>,
): GainStudy {
	const columns = columnsOf(gain.id, question.inputs);
	const withIt = sampled(
		question,
		basis.scores.map((scores) => columns.map((column) => scores[column]!)),
	);
	const rows = basis.rows.map((values, i) => {
		const [as, changed] = [answersIn(values), answersIn(withIt[i]!)];
		return gain.how === "made" ? worthBetween(as, changed) : worthBetween(changed, as);
	});
	return {
		gain,
		ranges: NAMES.map((name, i) => ranges[i] ?? sampleRange(gain, rows, name)),
		bends: undefined,
		rows,
		days: days + withIt.length,
	};
}

const answersIn = (values: Values): DayAnswers => ({
	timeToTarget: values.timeToTarget!,
	endTemperature: values.endTemperature!,
	usableVolume: values.usableVolume!,
	toWater: values.toWater!,
});

/** The range of a gain in a sample. To reach the target where nothing else does saves more time than any number; where neither plant
 *  reaches it there is no time to save, and the row is left out. */
function sampleRange({ gains }: Gain, rows: readonly Worth[], name: DayAnswer): NamedRange {
	const found = rows
		.map((worth) => (name === "timeToTarget" ? timeSaved(worth) : worth.gains[name]))
		.filter((value) => !Number.isNaN(value))
		.sort((a, b) => a - b);
	const at = (probability: number) => finite(orderStatistic(found, found.length, probability));
	return {
		name,
		low: at(TAIL),
		central: gains[name],
		high: at(1 - TAIL),
		method: "sample",
		answered: found.filter(Number.isFinite).length / rows.length,
	};
}

const NEVER = Number.POSITIVE_INFINITY;

function timeSaved({ gains, reaches }: Worth): number {
	switch (reaches) {
		case "onlyWith":
			return NEVER;
		case "onlyWithout":
			return -NEVER;
		case "both":
		case "neither":
			return gains.timeToTarget;
		default:
			return reaches satisfies never;
	}
}

const finite = (value: number) => (Number.isFinite(value) ? value : Number.NaN);
