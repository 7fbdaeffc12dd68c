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

/** Uncertainty range of one result, whose field describes it. */
export const ranged = (field: z.ZodNumber) =>
	z.strictObject({
		low: field
			.meta({
				description: `${field.description} Low end of the range. Absent if too few plants have this result.`,
			})
			.optional(),
		central: field
			.meta({
				description: `${field.description} Value for the plant as described. Absent if it has none. In a \`sample\` it can be slightly outside low and high. The plant is then one of the few excluded, for example where a limit stops all others.`,
			})
			.optional(),
		high: field
			.meta({
				description: `${field.description} High end of the range. Absent if more plants lack this result than the range excludes above.`,
			})
			.optional(),
		method: z.enum(METHODS).meta({
			description:
				"How the range was computed. `propagation`: each input is varied alone, and the effects are summed to second order. `sample`: all inputs are drawn at once in a seeded Latin hypercube, because the result bends sharply here. So few draws leave the coverage uncertain by about 0.05.",
		}),
	});

const Effect = z
	.strictObject({
		timeToTargetMin: minutes(
			"Change of the time to target. Absent if the target is not reached either way.",
		).optional(),
		endTemperatureK: kelvinDifference("Change of the tank's mean temperature at the end of the run."),
		usableLitresAt40C: litres("Change of the water available at the tap."),
		toWaterKwh: kilowattHours("Change of the heat delivered to the water."),
	})
	.meta({ description: "Effect of raising this input alone by one standard deviation." });

/** What a spread is based on. */
export const spreadGrounds = {
	...grounds,
	reason: grounds.reason.meta({ description: "Why this standard deviation is used." }),
	basis: grounds.basis.optional().meta({
		description: "What the standard deviation is based on, as in `assumed`. Absent if the request states it.",
	}),
	confirmed: grounds.confirmed.optional().meta({
		description:
			"False if the standard deviation has not yet been compared with its source. Absent if the request states it.",
	}),
};

/** What a spread is based on.
 *  @param defaults  of the spreads that the request omits */
export function groundsOfSpread(defaults: readonly Assumed[], name: string) {
	const {
		pointer: _pointer,
		value: _value,
		...grounds
	} = defaults.find(({ pointer }) => pointer === `/${name}`) ?? STATED;
	return grounds;
}
const STATED = { pointer: "", value: 0, reason: "stated in the request" };

export const Range = z
	.strictObject({
		coverage: ratio("Share of plants of this description whose result is between low and high."),
		timeToTargetMin: ranged(minutes("Time from the start of the run to the target.")),
		endTemperatureC: ranged(celsius("Mean temperature of the tank at the end of the run.")),
		usableLitresAt40C: ranged(
			litres("Water available at the tap at the end of the run, mixed with mains water to 40 °C."),
		),
		toWaterKwh: ranged(kilowattHours("Heat delivered to the water.")),
		shareReached: ratio("Share of plants that reach the target. Absent if all do, or none.").optional(),
		inputs: z
			.array(
				z.strictObject({
					name: z.enum(SPREAD_NAMES).meta({ description: "Name of the input, as in `spreads`." }),
					spread: z
						.number()
						.meta({ description: "Standard deviation of the input, in the unit of `spreads`." }),
					...spreadGrounds,
					effect: Effect,
				}),
			)
			.meta({ description: "Inputs that were varied for the range." }),
		days: z
			.number()
			.int()
			.meta({ description: "Number of days simulated for the range, this one included." }),
	})
	.openapi("Range", {
		description:
			"Uncertainty ranges of the results, from what is not known exactly about sky, plant and correlations.",
	});

type Wire = z.input<typeof Range>;

/** A range that a request asks for. */
export interface RangePlan<S> {
	readonly spreads: S;
	readonly defaults: readonly Assumed[]; // of the spreads that the request omits
	readonly omitted: boolean; // whether it omits `spreads` altogether
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

/** The default spreads of a range, if the request omits `spreads` altogether; single ones that it omits are among the
 *  request's other defaults.
 *  @param varied  by their names on the wire */
export function assumedSpreads<S>(
	{ defaults, omitted }: RangePlan<S>,
	varied: readonly string[],
): readonly Assumed[] {
	if (!omitted) return [];
	return defaults
		.filter(({ pointer }) => varied.includes(pointer.slice(1)))
		.map((one) => ({ ...one, pointer: `/spreads${one.pointer}` }));
}

/** The day as described: the case, and its outcome by one march. */
interface StatedDay {
	readonly stated: DayCase;
	readonly outcome: () => DayOutcome;
	/** Refuses a range that would take too much work, as the marched day shows. */
	readonly requireSpare: (steps: number) => void;
}

/** A day, with its range if the request asks for one. */
export interface DayWithRange {
	readonly outcome: DayOutcome;
	readonly range: Wire | undefined;
	readonly ranged: { readonly day: RangedDay; readonly spreads: DaySpreads } | undefined; // what the range was computed from
	readonly methods: readonly Method[]; // of the range
	readonly assumed: readonly Assumed[]; // spreads that the request omits
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

/** The day with its range. If the day itself is sound but one within its spreads is not, the range is refused. */
function rangedOrRefused(stated: DayCase, outcome: DayOutcome, spreads: DaySpreads): RangedDay {
	try {
		return rangedDay(stated, outcome, spreads);
	} catch (error) {
		if (!(error instanceof DomainError)) throw error;
		const { message } = fromDomainError(error, "body");
		const detail = `withRange cannot be met, because a plant within the spreads is outside the models: ${message}`;
		throw refusal(error.code, detail, "body", "/withRange");
	}
}

function wireRange(report: RangeReport, { spreads, defaults }: RangePlan<Spreads>): Wire {
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
			return { name, spread: spreads[name], ...groundsOfSpread(defaults, name), effect: wireEffect(effects) };
		}),
		days: report.cases,
	};
}

const answerNamed = ({ ranges }: RangeReport, wanted: string) => ranges.find(({ name }) => name === wanted)!;

/** One result's range in wire units, without the ends that it lacks. */
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

/** Spreads apply to a range. */
export const spreadsOfRange: Rule<{ readonly withRange: boolean; readonly spreads?: unknown }> = ({
	withRange,
	spreads,
}) =>
	spreads && !withRange
		? [contradictory("/spreads", "spreads apply only to a range; set withRange to true, or omit spreads")]
		: [];
