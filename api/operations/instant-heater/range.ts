import { z } from "@hono/zod-openapi";
import {
	type InstantOutcome,
	type Method,
	type RangeReport,
	rangedInstant,
	rangeMethods,
} from "../../../src/index.ts";
import { groundsOfSpread, ranged, spreadGrounds, wireAnswer } from "../../parts/range.ts";
import { type Assumed, defaultsTaken } from "../../wire/defaults.ts";
import { litresPerMinute, ratio, squareMetres, watts } from "../../wire/units.ts";
import type { InstantPlan } from "./plan.ts";
import { feedFlow } from "./plan.ts";
import { coreInstantSpreads, INSTANT_SPREAD_NAMES, InstantSpreads, instantSpreadName } from "./spread.ts";

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

interface Asked {
	readonly withRange: boolean;
	readonly spreads?: InstantSpreads | undefined;
}

interface AnsweredRange {
	readonly wire: Wire;
	readonly methods: readonly Method[];
	readonly assumed: readonly Assumed[]; // spreads that nobody gave
}

/** The range of an instant heater, if one was asked for.
 *  @param given  the request as it came */
export function instantRange(
	asked: Asked,
	given: unknown,
	plan: InstantPlan,
	outcome: InstantOutcome,
): AnsweredRange | undefined {
	if (!asked.withRange) return undefined;
	const spreads = asked.spreads ?? InstantSpreads.parse({});
	const taken = defaultsTaken(InstantSpreads, (given as Partial<Asked>).spreads ?? {}, spreads);
	const core = coreInstantSpreads(spreads);
	const best = rangedInstant({ ...plan.caseUnder(outcome.best.conditions), wantedFlow: undefined }, core);
	const weakest =
		plan.task.wantedFlow === undefined
			? undefined
			: rangedInstant(plan.caseUnder(outcome.weakest.conditions), core);
	const varied = best.effects.map(({ input }) => `/${instantSpreadName(input)}`);
	const unsaid = asked.spreads ? [] : taken.filter(({ pointer }) => varied.includes(pointer));
	return {
		wire: wireRange(best, weakest, plan, spreads, taken),
		methods: rangeMethods({ ...best, ranges: [...best.ranges, ...(weakest?.ranges ?? [])] }),
		assumed: unsaid.map((one) => ({ ...one, pointer: `/spreads${one.pointer}` })),
	};
}

const named = ({ ranges }: RangeReport, wanted: string) => ranges.find(({ name }) => name === wanted)!;
const asItIs = (si: number) => si;

function wireRange(
	best: RangeReport,
	weakest: RangeReport | undefined,
	plan: InstantPlan,
	spreads: InstantSpreads,
	taken: readonly Assumed[],
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
				...groundsOfSpread(taken, name),
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
