import {
	cautionsOf,
	type GainRange,
	type ImprovementId,
	type Method,
	type RangedDay,
	rangeMethods,
} from "../../../src/index.ts";
import { hostel } from "../../demo/hostel.ts";
import { dayDesigns } from "../../parts/day-plan.ts";
import { DAY_RULES } from "../../parts/day-rules.ts";
import { wireDesign } from "../../parts/design.ts";
import { wireReason } from "../../parts/reason.ts";
import { isoText } from "../../wire/time-zone.ts";
import { marchAdvice, marchFactor } from "../march-cost.ts";
import { operation } from "../operation.ts";
import { wireDay, wireImprovements } from "./answer.ts";
import { sensitivityForms } from "./forms.ts";
import { sensitivityPlan } from "./plan.ts";
import { ranking } from "./ranking.ts";
import { rankingAdvice } from "./ranking-advice.ts";
import { SensitivityRequest } from "./request.ts";
import { SensitivityResponse } from "./response.ts";

export const sensitivity = operation({
	method: "post",
	path: "/v1/sensitivity",
	operationId: "rankImprovements",
	tag: "Plant",
	summary: "Improvements of a plant, ranked",
	description: [
		"Ranks the improvements that a builder can make, each applied alone and by one realistic step. The response states what each gains in minutes to the target, final temperature,",
		"usable litres and heat to the water, and the price per unit gained where prices are sent. Improvements that do not apply to the plant are listed with the reason.",
		"Improvements that lead to a plant outside the models are listed under `refused`. Where the tank reaches its limit there are no litres to gain, and `advice` recommends ranking by minutes.",
		"With `withRange` every gain has a range, computed from the same samples of plant and improved plant, and each place in the ranking states whether it is certain.",
	].join("\n"),
	input: SensitivityRequest,
	output: SensitivityResponse,
	examples: {
		hostel: {
			summary: "A hostel, with prices, ranked by usable litres",
			value: {
				...hostel.request,
				prices: {
					currency: "MAD",
					aperture: 1800,
					reflectance: 1400,
					cleaning: 0,
					tankLagging: 450,
					supplyLagging: 160,
					coilLength: 300,
				},
			},
		},
		bareSpiral: {
			summary: "An open coil in the wind, ranked by minutes",
			value: {
				site: { latitude: 28.6, longitude: 77.2, elevationM: 216 },
				date: "2025-02-15",
				sky: { kind: "clear", windMPerS: 4 },
				dish: { diameterM: 1.4 },
				receiver: { kind: "openCoil" },
				tank: { volumeL: 60 },
				rankedBy: "minutes",
			},
		},
		ranges: {
			summary: "A large tank, with the range of each gain and the certainty of each rank",
			value: {
				site: { latitude: 31.2, longitude: -7.9, elevationM: 2350 },
				date: "2026-01-15",
				targetTemperatureC: 40,
				dish: { diameterM: 2 },
				tank: { volumeL: 300, nodes: 4 },
				rankedBy: "minutes",
				withRange: true,
				stepS: 300,
			},
		},
	},
	maxAge: 0,
	cost: 200,
	rangeCost: 65, // all improvements over the same samples
	costFactor: marchFactor,
	costAdvice: marchAdvice,
	forms: sensitivityForms,
	designs: dayDesigns,
	rules: DAY_RULES,
	plan: sensitivityPlan,
	outcome: ranking,
	answer: (plan, { day, found, ranges, days }) => {
		const { run, task, plant, rankedBy, prices } = plan;
		const { outcome, range } = day;
		const advice = rankingAdvice(outcome, rankedBy);
		return {
			timeZone: run.timeZone,
			startTime: isoText(run.start, run.timeZone),
			endTime: isoText(run.end, run.timeZone),
			base: wireDay(outcome, task.start),
			...(outcome.shortfall !== undefined && {
				reason: wireReason(outcome.shortfall, plant, task, outcome),
			}),
			rankedBy,
			...(advice && { advice }),
			...wireImprovements(found, { plan, outcome, ranges }),
			...(prices && { currency: prices.currency }),
			days,
			...(range && { range }),
			design: wireDesign(plant, task),
		};
	},
	cautions: ({ plant, build, task, air }, { day: { outcome } }) =>
		cautionsOf({ plant, build, task, air, outcome }),
	methods: ({ skyMethods }, { day, ranges }) => [
		...skyMethods,
		...day.outcome.methods,
		...methodsOfRanges(day.ranged?.day, ranges),
	],
	assumed: ({ day }) => day.assumed,
});

function methodsOfRanges(
	day: RangedDay | undefined,
	gains: ReadonlyMap<ImprovementId, GainRange> | undefined,
): readonly Method[] {
	if (!day || !gains) return [];
	const ofGains = [...gains.values()].flatMap((gain) => (gain.outcome === "ranged" ? gain.ranges : []));
	return rangeMethods({ ranges: [...day.range.ranges, ...ofGains] });
}
