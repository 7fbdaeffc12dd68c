import { z } from "@hono/zod-openapi";
import {
	type AnswerRange,
	type DayCase,
	type DayOutcome,
	type DaySpreads,
	DomainError,
	type Method,
	type RangedDay,
	type RangeReport,
	rangedDay,
	rangeMethods,
} from "../../src/index.ts";
import { fromDomainError, refusal } from "../problem/problem.ts";
import { contradictory, type Rule } from "../validation/rule.ts";
import { type Assumed, appliedDefaults } from "../wire/defaults.ts";
import { celsius, fromSi, kelvinDifference, kilowattHours, litres, minutes, ratio } from "../wire/units.ts";
import { grounds } from "./assumed.ts";
import { coreSpreads, SPREAD_NAMES, type Spreads, spreadName } from "./spread.ts";

const METHODS = ["propagation", "sample"] as const satisfies readonly AnswerRange["method"][];

/** Low, central and high of one number of an answer. */
export const ranged = (field: z.ZodNumber) =>
	z.strictObject({
		low: field.meta({ description: "Absent where too few plants come to an answer." }).optional(),
		central: field
			.meta({
				description:
					"Of the plant as stated. Absent where it has no answer. Of a `sample` it can lie a little outside low and high: the plant as stated is then itself one of the few that are left out, as where a limit stops all others.",
			})
			.optional(),
		high: field
			.meta({
				description: "Absent where more plants than are left out above never come to an answer.",
			})
			.optional(),
		method: z.enum(METHODS).meta({
			description:
				"`propagation`: each input moved alone, their effects summed to second order. `sample`: all inputs drawn at once in a seeded Latin hypercube, since the answer bends sharply near here; so few draws leave the coverage uncertain by some 0.05.",
		}),
	});

const Effect = z
	.strictObject({
		timeToTargetMin: minutes("To the target. Absent where it is not reached either way.").optional(),
		endTemperatureK: kelvinDifference("Of the tank at the end."),
		usableLitresAt40C: litres("At the tap."),
		toWaterKwh: kilowattHours("Of heat to the water."),
	})
	.meta({ description: "What one standard deviation more of it alone changes." });

/** What a spread rests on. */
export const spreadGrounds = {
	...grounds,
	reason: grounds.reason.meta({ description: "Why this spread." }),
	basis: grounds.basis.optional().meta({
		description: "What the spread rests on, as in `assumed`. Absent where the request states it.",
	}),
	confirmed: grounds.confirmed.optional().meta({
		description: "As in `assumed`. Absent where the request states the spread.",
	}),
};

/** @param taken  spreads that the request left out */
export function groundsOfSpread(taken: readonly Assumed[], name: string) {
	const {
		pointer: _pointer,
		value: _value,
		...grounds
	} = taken.find(({ pointer }) => pointer === `/${name}`) ?? STATED;
	return grounds;
}
const STATED = { pointer: "", value: 0, reason: "as the request states" };

export const Range = z
	.strictObject({
		coverage: ratio("Share of plants as stated whose answer falls between low and high."),
		timeToTargetMin: ranged(minutes("From the start to the target.")),
		endTemperatureC: ranged(celsius("Mean of the tank at the end.")),
		usableLitresAt40C: ranged(
			litres("What the tank gives at the tap at the end, mixed with mains to 40 °C."),
		),
		toWaterKwh: ranged(kilowattHours("Heat to the water.")),
		shareReached: ratio(
			"Share of plants that reach the target at all. Absent where all do, or none.",
		).optional(),
		inputs: z
			.array(
				z.strictObject({
					name: z.enum(SPREAD_NAMES).meta({ description: "Which input, as in `spreads`." }),
					spread: z.number().meta({ description: "Its standard deviation, in the unit of `spreads`." }),
					...spreadGrounds,
					effect: Effect,
				}),
			)
			.meta({ description: "What was varied." }),
		days: z.number().int().meta({ description: "How many days were worked out for it, this one included." }),
	})
	.openapi("Range", {
		description: "Between what the answer lies, by what is not known exactly of sky, plant and correlations.",
	});

type Wire = z.input<typeof Range>;

/** A range that a request wants. */
export interface RangePlan<S> {
	readonly spreads: S;
	readonly defaults: readonly Assumed[]; // the spreads that the request left out
	readonly omitted: boolean; // whether it left out all of them together
}

/** @param sent  the request as it came     @param schema  of its spreads */
export function rangePlan<S extends z.ZodType>(
	request: { readonly withRange: boolean; readonly spreads?: z.output<S> | undefined },
	sent: unknown,
	schema: S,
): RangePlan<z.output<S>> | undefined {
	if (!request.withRange) return undefined;
	const spreads = request.spreads ?? schema.parse({});
	const sentSpreads = (sent as { readonly spreads?: unknown }).spreads ?? {};
	return {
		spreads,
		defaults: appliedDefaults(schema, sentSpreads, spreads),
		omitted: request.spreads === undefined,
	};
}

/** The spreads that a range was found with and that the request left out all together; what it leaves out of a list of its own
 *  is told with the rest of its defaults.
 *  @param varied  by their names on the wire */
export function assumedSpreads<S>(
	{ defaults: taken, omitted: leftOut }: RangePlan<S>,
	varied: readonly string[],
): readonly Assumed[] {
	if (!leftOut) return [];
	return taken
		.filter(({ pointer }) => varied.includes(pointer.slice(1)))
		.map((one) => ({ ...one, pointer: `/spreads${one.pointer}` }));
}

/** The day as stated: the case, and its outcome by one march. */
interface StatedDay {
	readonly stated: DayCase;
	readonly outcome: () => DayOutcome;
	/** Refuses a range that the day, once marched, shows to be too much work. */
	readonly requireSpare: (steps: number) => void;
}

/** A day, and its range where one is wanted. */
export interface DayWithRange {
	readonly outcome: DayOutcome;
	readonly range: Wire | undefined;
	readonly ranged: { readonly day: RangedDay; readonly spreads: DaySpreads } | undefined; // what the range was found from
	readonly methods: readonly Method[]; // of the range
	readonly assumed: readonly Assumed[]; // spreads that the request left out
}

export function dayWithRange(plan: RangePlan<Spreads> | undefined, day: StatedDay): DayWithRange {
	const outcome = day.outcome();
	if (!plan) return { outcome, range: undefined, ranged: undefined, methods: [], assumed: [] };
	day.requireSpare(outcome.steps);
	const spreads = coreSpreads(plan.spreads);
	const ranged = { day: rangedOrRefused(day.stated, outcome, spreads), spreads };
	const { range } = ranged.day;
	const varied = range.effects.map(({ input }) => spreadName(input));
	return {
		outcome,
		range: wireRange(range, plan),
		ranged,
		methods: rangeMethods(range),
		assumed: assumedSpreads(plan, varied),
	};
}

/** The day with its range. Where the day itself is sound but one within its spreads is not, the range is what is refused. */
function rangedOrRefused(stated: DayCase, outcome: DayOutcome, spreads: DaySpreads): RangedDay {
	try {
		return rangedDay(stated, outcome, spreads);
	} catch (error) {
		if (!(error instanceof DomainError)) throw error;
		const { message } = fromDomainError(error, "body");
		const detail = `a plant within the spreads is beyond the models, so that there is no range: ${message}`;
		throw refusal(error.code, detail, "body", "/withRange");
	}
}

function wireRange(report: RangeReport, { spreads, defaults: taken }: RangePlan<Spreads>): Wire {
	const { answered } = answerNamed(report, "timeToTarget");
	return {
		coverage: report.coverage,
		timeToTargetMin: wireAnswer(answerNamed(report, "timeToTarget"), fromSi.minutes),
		endTemperatureC: wireAnswer(answerNamed(report, "endTemperature"), fromSi.celsius),
		usableLitresAt40C: wireAnswer(answerNamed(report, "usableVolume"), fromSi.litres),
		toWaterKwh: wireAnswer(answerNamed(report, "toWater"), fromSi.kilowattHours),
		...(answered > 0 && answered < 1 && { shareReached: answered }),
		inputs: report.effects.map(({ input, effects }) => {
			const name = spreadName(input);
			return { name, spread: spreads[name], ...groundsOfSpread(taken, name), effect: wireEffect(effects) };
		}),
		days: report.cases,
	};
}

const answerNamed = ({ ranges }: RangeReport, wanted: string) => ranges.find(({ name }) => name === wanted)!;

/** One answer's range in wire units, what it lacks left out. */
export function wireAnswer({ low, central, high, method }: AnswerRange, wire: (si: number) => number) {
	return {
		...(!Number.isNaN(low) && { low: wire(low) }),
		...(!Number.isNaN(central) && { central: wire(central) }),
		...(!Number.isNaN(high) && { high: wire(high) }),
		method,
	};
}

function wireEffect(effects: Readonly<Record<string, number>>): z.input<typeof Effect> {
	const { timeToTarget, endTemperature, usableVolume, toWater } = effects;
	return {
		...(!Number.isNaN(timeToTarget) && { timeToTargetMin: fromSi.minutes(timeToTarget!) }),
		endTemperatureK: endTemperature!,
		usableLitresAt40C: fromSi.litres(usableVolume!),
		toWaterKwh: fromSi.kilowattHours(toWater!),
	};
}

/** Spreads belong to a range. */
export const spreadsOfRange: Rule<{ readonly withRange: boolean; readonly spreads?: unknown }> = ({
	withRange,
	spreads,
}) =>
	spreads && !withRange
		? [contradictory("/spreads", "spreads belong to a range: ask for one with `withRange`")]
		: [];
