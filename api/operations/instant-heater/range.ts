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
		flowLPerMin: litresPerMinute("Change of the flow under the strongest beam."),
		powerW: watts("Change of the power to the water under the strongest beam."),
		apertureNeededM2: squareMetres(
			"Change of the aperture needed under the weakest beam. Absent without a wanted flow and where no dish up to the bound provides it.",
		).optional(),
	})
	.meta({ description: "Changes of the results when this input alone rises by one standard deviation." });

export const InstantRange = z
	.strictObject({
		coverage: ratio("Share of heaters as stated whose result lies between `low` and `high`."),
		flowLPerMin: ranged(litresPerMinute("Flow under the strongest beam, measured at the cold feed.")),
		powerW: ranged(watts("Power to the water under the strongest beam.")),
		apertureNeededM2: ranged(squareMetres("Aperture needed for the wanted flow under the weakest beam."))
			.optional()
			.meta({
				description:
					"Aperture needed for the wanted flow under the weakest beam. Absent without a wanted flow.",
			}),
		inputs: z
			.array(
				z.strictObject({
					name: z.enum(INSTANT_SPREAD_NAMES).meta({ description: "Name of the input, as in `spreads`." }),
					spread: z
						.number()
						.meta({ description: "Standard deviation of the input, in the unit of `spreads`." }),
					...spreadGrounds,
					effect: Effect,
				}),
			)
			.meta({ description: "Inputs that were varied, each with its effect." }),
		states: z.number().int().meta({ description: "Number of steady states computed for the range." }),
	})
	.openapi("InstantRange", {
		description:
			"Uncertainty ranges of the results, from the uncertainty of sky, heater and correlations. Beam levels sent in the request count as exact.",
	});

type Wire = z.input<typeof InstantRange>;

/** The range of an instant heater, with its methods and assumptions. */
export interface HeaterRange {
	readonly wire: Wire;
	readonly methods: readonly Method[];
	readonly assumed: readonly Assumed[]; // spreads that the request omitted
}

/** The range of an instant heater, where requested. */
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
const identity = (si: number) => si;

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
		powerW: wireAnswer(named(best, "power"), identity),
		...(weakest && { apertureNeededM2: wireAnswer(named(weakest, "neededAperture"), identity) }),
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
