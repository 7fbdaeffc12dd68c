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
import { fromDomainError, refused } from "../problem/problem.ts";
import { type Assumed, defaultsTaken } from "../wire/defaults.ts";
import { celsius, fromSi, kelvinDifference, kilowattHours, litres, minutes, ratio } from "../wire/units.ts";
import { grounds } from "./assumed.ts";
import { coreSpreads, SPREAD_NAMES, Spreads, spreadName } from "./spread.ts";

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

/** Whether a range is asked for, and with which spreads. */
export interface RangeAsked {
	readonly withRange: boolean;
	readonly spreads?: Spreads | undefined;
}

/** A day that is asked about: the case, and its outcome by one march. */
interface DayAsked {
	readonly stated: DayCase;
	readonly outcome: () => DayOutcome;
	/** Refuses a range that the day, once marched, shows to be too much work. */
	readonly requireSpare: (steps: number) => void;
}

/** A day, and its range if one was asked for. */
export interface AnsweredDay {
	readonly outcome: DayOutcome;
	readonly range: Wire | undefined;
	readonly ranged: { readonly day: RangedDay; readonly spreads: DaySpreads } | undefined; // what the range was found from
	readonly methods: readonly Method[]; // of the range
	readonly assumed: readonly Assumed[]; // spreads that nobody gave
}

/** Works out a day, and its range with it where that is asked for.
 *  @param given  the request as it came */
export function answeredDay(asked: RangeAsked, given: unknown, day: DayAsked): AnsweredDay {
	const outcome = day.outcome();
	if (!asked.withRange) return { outcome, range: undefined, ranged: undefined, methods: [], assumed: [] };
	day.requireSpare(outcome.steps);
	const spreads = asked.spreads ?? Spreads.parse({});
	const mine = (given as { readonly spreads?: unknown }).spreads ?? {};
	const taken = defaultsTaken(Spreads, mine, spreads);
	const ranged = {
		day: rangedOrRefused(day.stated, outcome, coreSpreads(spreads)),
		spreads: coreSpreads(spreads),
	};
	const { range } = ranged.day;
	const varied = range.effects.map(({ input }) => `/${spreadName(input)}`);
	const unsaid = asked.spreads ? [] : taken.filter(({ pointer }) => varied.includes(pointer));
	return {
		outcome,
		range: wireRange(range, spreads, taken),
		ranged,
		methods: rangeMethods(range),
		assumed: unsaid.map((one) => ({ ...one, pointer: `/spreads${one.pointer}` })),
	};
}

/** The day with its range. Where the day itself is sound but one within its spreads is not, the range is what is refused. */
function rangedOrRefused(stated: DayCase, outcome: DayOutcome, spreads: DaySpreads): RangedDay {
	try {
		return rangedDay(stated, outcome, spreads);
	} catch (error) {
		if (!(error instanceof DomainError)) throw error;
		const { message } = fromDomainError(error, "body");
		const why = `a plant within the spreads is beyond the models, so that there is no range: ${message}`;
		throw refused(error.code, why, "body", "/withRange");
	}
}

function wireRange(report: RangeReport, spreads: Spreads, taken: readonly Assumed[]): Wire {
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
