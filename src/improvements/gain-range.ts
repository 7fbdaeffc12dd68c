import { type Effect, logarithmicEffects } from "../numeric/moments.ts";
import { type DayAnswer, type DayAnswers, dayValues } from "../uncertainty/day-answers.ts";
import type { DayCase } from "../uncertainty/day-case.ts";
import { dayInputs } from "../uncertainty/day-inputs.ts";
import type { DaySpreads } from "../uncertainty/day-spreads.ts";
import type { Question, Values } from "../uncertainty/question.ts";
import {
	type AnswerRange,
	effectsOf,
	keepsItsSign,
	orderStatistic,
	rangeOfEffects,
	type Study,
	sampleValues,
	TAIL,
	unanswered,
} from "../uncertainty/range.ts";
import { type Response, response } from "../uncertainty/response.ts";
import { columnsOf, scoreCount } from "./gain-inputs.ts";
import { type Gain, type Worth, worthBetween } from "./sensitivity.ts";

/** Sample of the unchanged plant, the reference of gains. */
export interface Basis {
	readonly scores: readonly Float64Array[]; // with those of replaced inputs [rows][scores]
	readonly rows: readonly Values[]; // values of the unchanged plant
}

type NamedRange = AnswerRange & { readonly name: DayAnswer };

/** Results for the gains of one improvement. */
export interface GainStudy {
	readonly gain: Gain;
	readonly ranges: readonly NamedRange[];
	readonly effects: Readonly<Record<DayAnswer, readonly Effect[]>> | undefined; // by score, where they were propagated
	readonly rows: readonly Worth[]; // in the sample, where one was needed
	readonly days: number; // number of computed days
}

/** Gains by propagation, or those that need a sample. */
export type PropagatedGains =
	| { readonly outcome: "answered"; readonly study: GainStudy }
	| {
			readonly outcome: "open";
			readonly gain: Gain;
			readonly question: Question<DayCase>;
			readonly ranges: readonly (NamedRange | undefined)[]; // those already known
			readonly days: number;
	  };

const NAMES = ["timeToTarget", "endTemperature", "usableVolume", "toWater"] as const;

/** Ranges of an improvement's gains. Plant and improved plant deviate equally, so their effects are subtracted before they
 *  are summed, and a sample (`sampledGains`) compares them row by row.
 *  Cost  at most 12 simulations by propagation; a sample needs as many as that of the plant, about 28, and replaces the propagation
 *        wherever the plant needed one
 *  @param study  of the unchanged plant */
export function propagatedGains(study: Study<DayCase>, gain: Gain, spreads: DaySpreads): PropagatedGains {
	const question: Question<DayCase> = {
		...study.question,
		stated: gain.of,
		central: dayValues(gain.of.plant, gain.of.task, gain.day),
		inputs: dayInputs(gain.of, spreads),
	};
	if (study.rows.length > 0)
		return { outcome: "open", gain, question, ranges: NAMES.map(() => undefined), days: 0 };
	const found = response(question, { channels: study.found.downChannels });
	const days = found.computed.length - 1; // the improved day is known
	const effects = effectsOfGains(study, gain, question, found);
	const ranges = NAMES.map((name) => propagatedGain(study, gain, found, name, effects[name]));
	return ranges.every((range) => range !== undefined)
		? { outcome: "answered", study: { gain, ranges, effects, rows: [], days } }
		: { outcome: "open", gain, question, ranges, days };
}

function effectsOfGains(
	study: Study<DayCase>,
	{ id, how }: Gain,
	{ inputs }: Question<DayCase>,
	found: Response,
): Readonly<Record<DayAnswer, readonly Effect[]>> {
	const columns = columnsOf(id, inputs);
	const of = (name: DayAnswer): readonly Effect[] => {
		const sign = (name === "timeToTarget") === (how === "made") ? -1 : 1; // less time is a gain, and so is avoided neglect
		const effects = Array.from({ length: scoreCount(inputs) }, () => ({ first: 0, second: 0 }));
		const add = (column: number, { first, second }: Effect, by: number) => {
			effects[column]!.first += by * first;
			effects[column]!.second += by * second;
		};
		effectsOf(study.found, name).forEach((effect, i) => {
			add(i, effect, -sign);
		});
		effectsOf(found, name).forEach((effect, i) => {
			add(columns[i]!, effect, sign);
		});
		return effects;
	};
	return {
		timeToTarget: of("timeToTarget"),
		endTemperature: of("endTemperature"),
		usableVolume: of("usableVolume"),
		toWater: of("toWater"),
	};
}

/** The range of a gain by propagation; undefined where either plant is close to a point where it is not smooth. */
function propagatedGain(
	study: Study<DayCase>,
	{ gains }: Gain,
	found: Response,
	name: DayAnswer,
	effects: readonly Effect[],
): NamedRange | undefined {
	const { margins } = study.question.answers.find((answer) => answer.name === name)!;
	const smooth = margins.every((margin) => keepsItsSign(study.found, margin) && keepsItsSign(found, margin));
	if (!smooth) return undefined;
	const never = ({ computed }: Response) => computed.every((values) => Number.isNaN(values[name]));
	const range =
		never(study.found) || never(found) ? unanswered(name) : multiplicativeRange(name, gains[name], effects);
	return range && { ...range, name };
}

/** The range of a gain from the effects of its inputs. Most of a gain is proportional to each of them (the saving by insulation depends on
 *  the heat and on the hours), so that their effects multiply as long as none alone brings the gain close to zero. */
function multiplicativeRange(
	name: DayAnswer,
	central: number,
	effects: readonly Effect[],
): AnswerRange | undefined {
	const logs = logarithmicEffects(central, effects);
	if (logs === undefined) return rangeOfEffects(name, central, effects);
	const range = rangeOfEffects(name, 0, logs);
	if (range === undefined) return undefined;
	const ends = [central * Math.exp(range.low), central * Math.exp(range.high)];
	return { ...range, low: Math.min(...ends), central, high: Math.max(...ends) };
}

/** Gains that propagation leaves open, by a sample. */
export function sampledGains(
	basis: Basis,
	{ gain, question, ranges, days }: Extract<PropagatedGains, { outcome: "open" }>,
): GainStudy {
	const columns = columnsOf(gain.id, question.inputs);
	const withIt = sampleValues(
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
		effects: undefined,
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

/** The range of a gain in a sample. Where only the improved plant reaches the target, the saved time is infinite; where neither plant
 *  reaches it, the row is omitted. */
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
