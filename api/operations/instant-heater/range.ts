import { z } from "@hono/zod-openapi";
import {
	type InstantOutcome,
	type Method,
	type RangeReport,
	rangedInstant,
	rangeMethods,
} from "../../../src/index.ts";
import {
	assumedSpreads,
	groundsOfSpread,
	type RangePlan,
	ranged,
	spreadGrounds,
	wireAnswer,
} from "../../parts/range.ts";
import type { Assumed } from "../../wire/defaults.ts";
import { litresPerMinute, ratio, squareMetres, watts } from "../../wire/units.ts";
import { feedFlow, type InstantPlan } from "./plan.ts";
import {
	coreInstantSpreads,
	INSTANT_SPREAD_NAMES,
	type InstantSpreads,
	instantSpreadName,
} from "./spread.ts";

const Effect = z
	.strictObject({
		flowLPerMin: litresPerMinute("Under the best sun."),
		powerW: watts("Under the best sun."),
		apertureNeededM2: squareMetres(
			"Under the weakest sun. Absent without a wanted flow, and where none up to the bound gives it.",
		).optional(),
	})
	.meta({ description: "What one standard deviation more of it alone changes." });

export const InstantRange = z
	.strictObject({
		coverage: ratio("Share of heaters as stated whose answer falls between low and high."),
		flowLPerMin: ranged(litresPerMinute("Under the best sun, in litres at the cold feed.")),
		powerW: ranged(watts("To the water under the best sun.")),
		apertureNeededM2: ranged(squareMetres("For the wanted flow under the weakest sun."))
			.optional()
			.meta({ description: "Absent without a wanted flow." }),
		inputs: z
			.array(
				z.strictObject({
					name: z.enum(INSTANT_SPREAD_NAMES).meta({ description: "Which input, as in `spreads`." }),
					spread: z.number().meta({ description: "Its standard deviation, in the unit of `spreads`." }),
					...spreadGrounds,
					effect: Effect,
				}),
			)
			.meta({ description: "What was varied." }),
		states: z.number().int().meta({ description: "How many steady states were worked out for it." }),
	})
	.openapi("InstantRange", {
		description:
			"Between what the answer lies, by what is not known exactly of sky, heater and correlations. A beam level that was asked about is taken as it is said.",
	});

type Wire = z.input<typeof InstantRange>;

/** The range of an instant heater, and what it rests on. */
export interface HeaterRange {
	readonly wire: Wire;
	readonly methods: readonly Method[];
	readonly assumed: readonly Assumed[]; // spreads that the request left out
}

/** The range of an instant heater, where one is wanted. */
export function instantRange(plan: InstantPlan, outcome: InstantOutcome): HeaterRange | undefined {
	const { range } = plan;
	if (!range) return undefined;
	const spreads = coreInstantSpreads(range.spreads);
	const best = rangedInstant({ ...plan.caseUnder(outcome.best.conditions), wantedFlow: undefined }, spreads);
	const weakest =
		plan.task.wantedFlow === undefined
			? undefined
			: rangedInstant(plan.caseUnder(outcome.weakest.conditions), spreads);
	const varied = best.effects.map(({ input }) => instantSpreadName(input));
	return {
		wire: wireRange(best, weakest, plan, range),
		methods: rangeMethods({ ...best, ranges: [...best.ranges, ...(weakest?.ranges ?? [])] }),
		assumed: assumedSpreads(range, varied),
	};
}

const named = ({ ranges }: RangeReport, wanted: string) => ranges.find(({ name }) => name === wanted)!;
const asItIs = (si: number) => si;

function wireRange(
	best: RangeReport,
	weakest: RangeReport | undefined,
	plan: InstantPlan,
	{ spreads, defaults }: RangePlan<InstantSpreads>,
): Wire {
	const feed = feedFlow(plan);
	return {
		coverage: best.coverage,
		flowLPerMin: wireAnswer(named(best, "flow"), feed),
		powerW: wireAnswer(named(best, "power"), asItIs),
		...(weakest && { apertureNeededM2: wireAnswer(named(weakest, "neededAperture"), asItIs) }),
		inputs: best.effects.map(({ input, effects }) => {
			const name = instantSpreadName(input);
			const area = weakest?.effects.find((one) => one.input === input)?.effects.neededAperture;
			return {
				name,
				spread: spreads[name],
				...groundsOfSpread(defaults, name),
				effect: {
					flowLPerMin: feed(effects.flow!),
					powerW: effects.power!,
					...(area !== undefined && !Number.isNaN(area) && { apertureNeededM2: area }),
				},
			};
		}),
		states: best.cases + (weakest?.cases ?? 0),
	};
}
