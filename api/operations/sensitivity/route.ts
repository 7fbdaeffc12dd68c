import {
	cautionsOf,
	daySensitivity,
	type GainRange,
	type ImprovementId,
	type Method,
	type RangedDay,
	rangedGains,
	rangeMethods,
	warmUpDay,
} from "../../../src/index.ts";
import { hostel } from "../../demo/hostel.ts";
import { buildOf } from "../../parts/build.ts";
import { wireCaution } from "../../parts/caution.ts";
import { dayAir } from "../../parts/day-air.ts";
import { dayCaseOf, warmUpPlan } from "../../parts/day-plan.ts";
import { requireSound } from "../../parts/day-rules.ts";
import { wireDesign } from "../../parts/design.ts";
import { answeredDay } from "../../parts/range.ts";
import { wireReason } from "../../parts/reason.ts";
import { skyMethods } from "../../parts/weather.ts";
import { defaultsTaken, filling } from "../../wire/defaults.ts";
import { isoText } from "../../wire/time-zone.ts";
import { rangeWithin } from "../cost.ts";
import { operation } from "../operation.ts";
import { ANSWERS, wireDay, wireImprovements } from "./answer.ts";
import { sensitivityForms } from "./forms.ts";
import { rankingAdvice } from "./ranking-advice.ts";
import { SensitivityRequest, warmUpOf } from "./request.ts";
import { SensitivityResponse } from "./response.ts";
import { coreSteps } from "./steps.ts";

export const sensitivity = operation({
	method: "post",
	path: "/v1/sensitivity",
	operationId: "rankImprovements",
	tag: "Plant",
	summary: "What is worth improving?",
	description: [
		"Each improvement that a builder can make, alone and by one step that one would really take: what it changes of the minutes to the target, the temperature at the end,",
		"the usable litres and the heat to the water; ranked, and with what each gain costs where prices are given. What cannot be made on this plant is named with the reason.",
		"An improved plant that the models do not answer for is named under `refused`, and the rest ranked. A tank that meets its limit has no litres to gain: `advice` then says to rank by minutes.",
		"With `withRange` every gain has a range, of plant and improved plant in the same draws, and each place in the list says whether it is certain.",
	].join("\n"),
	input: SensitivityRequest,
	output: SensitivityResponse,
	examples: {
		hostel: {
			summary: "The hostel: what would its guests gain, and what for the money?",
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
			summary: "A bare spiral in the wind, ranked by minutes",
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
			summary: "A large tank made warm: how sure is each gain, and each place in the list?",
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
	forms: sensitivityForms,
	answer: (request, given, { settings }) => {
		const day = warmUpOf(request);
		requireSound(day);
		const defaults = defaultsTaken(SensitivityRequest, given, request);
		const air = dayAir(request.sky, defaults);
		const { fill, filled } = filling();
		const plan = warmUpPlan(day, fill);
		const { run, task, weather } = plan;
		const build = buildOf(request);
		const stated = dayCaseOf(plan);
		const { outcome, range, ranged, assumed } = answeredDay(request, given, {
			stated,
			outcome: () => warmUpDay(plan.plant, weather, task),
			requireSpare: (steps) => rangeWithin(settings.computingTime, "rankImprovements", steps),
		});
		const by = ANSWERS[request.rankedBy];
		const steps = coreSteps(request.steps, request.loop.pump);
		const found = daySensitivity(stated, outcome, steps, by);
		const gains = ranged && rangedGains(ranged.day, found, ranged.spreads, by);
		const improved = found.filter((one) => one.outcome === "gains").length;
		const advice = rankingAdvice(outcome, request.rankedBy);
		const list = wireImprovements(found, {
			plan,
			build,
			air,
			outcome,
			prices: request.prices,
			ranges: gains?.ranges,
		});
		return {
			timeZone: run.zone,
			startTime: isoText(run.start, run.zone),
			endTime: isoText(run.end, run.zone),
			base: wireDay(outcome, task.start),
			...(outcome.shortfall !== undefined && {
				reason: wireReason(outcome.shortfall, plan.plant, task, outcome),
			}),
			rankedBy: request.rankedBy,
			...(advice && { advice }),
			...list,
			...(request.prices && { currency: request.prices.currency }),
			days: (range?.days ?? 1) + improved + (gains?.days ?? 0),
			...(range && { range }),
			design: wireDesign(plan.plant, task),
			cautions: cautionsOf({ plant: plan.plant, build, task, air, outcome }).map(wireCaution),
			assumed: [...defaults, ...assumed, ...filled],
			methods: [
				...skyMethods(request.sky, plan.plant.site),
				...outcome.methods,
				...methodsOfRanges(ranged?.day, gains?.ranges),
			].map((method) => ({ ...method })),
		};
	},
});

function methodsOfRanges(
	day: RangedDay | undefined,
	gains: ReadonlyMap<ImprovementId, GainRange> | undefined,
): readonly Method[] {
	if (!day || !gains) return [];
	const ofGains = [...gains.values()].flatMap((gain) => (gain.outcome === "ranged" ? gain.ranges : []));
	return rangeMethods({ ranges: [...day.range.ranges, ...ofGains] });
}
