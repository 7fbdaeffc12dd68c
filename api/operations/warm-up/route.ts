import type { z } from "@hono/zod-openapi";
import { type Build, cautionsOf, type DayAir, type DayOutcome, warmUpDay } from "../../../src/index.ts";
import { hostel } from "../../demo/hostel.ts";
import { buildOf } from "../../parts/build.ts";
import { wireCaution } from "../../parts/caution.ts";
import { dayAir } from "../../parts/day-air.ts";
import { dayCaseOf, type WarmUpPlan, warmUpPlan } from "../../parts/day-plan.ts";
import { WarmUpRequest } from "../../parts/day-request.ts";
import { requireSound } from "../../parts/day-rules.ts";
import { wireDesign } from "../../parts/design.ts";
import { answeredDay } from "../../parts/range.ts";
import { wireReason } from "../../parts/reason.ts";
import { skyMethods } from "../../parts/weather.ts";
import { defaultsTaken, filling } from "../../wire/defaults.ts";
import { isoText } from "../../wire/time-zone.ts";
import { fromSi } from "../../wire/units.ts";
import { rangeWithin } from "../cost.ts";
import { operation } from "../operation.ts";
import { wireBalance } from "./energy-balance.ts";
import { warmUpForms } from "./forms.ts";
import { WarmUpResponse } from "./response.ts";
import { wireSeries } from "./series.ts";

export const warmUp = operation({
	method: "post",
	path: "/v1/tank/warm-up",
	operationId: "warmUpTank",
	tag: "Tank",
	summary: "When is the tank hot?",
	description: [
		"One day of a plant, from the sun to the tap: when the water reaches the target, how hot it ends, whether it boils, how many litres it gives,",
		"where the sun's energy went, and what to be careful of. Only site, date, the dish's size and the tank's volume are needed.",
		"A polar night, a sun too low or a target above boiling is an answer with its `reason`, not an error.",
	].join("\n"),
	input: WarmUpRequest,
	output: WarmUpResponse,
	examples: {
		hostel: { summary: hostel.summary, value: hostel.request },
		least: {
			summary: "The least that must be said",
			value: {
				site: { latitude: 28.6, longitude: 77.2, elevationM: 216 },
				date: "2025-02-15",
				dish: { diameterM: 1.4 },
				tank: { volumeL: 100 },
			},
		},
	},
	maxAge: 0,
	forms: warmUpForms,
	answer: (request, given, { settings }) => {
		requireSound(request);
		const defaults = defaultsTaken(WarmUpRequest, given, request);
		const air = dayAir(request.sky, defaults);
		const { fill, filled } = filling();
		const plan = warmUpPlan(request, fill);
		const day = answeredDay(request, given, {
			stated: dayCaseOf(plan),
			outcome: () => warmUpDay(plan.plant, plan.weather, plan.task),
			requireSpare: (steps) => rangeWithin(settings.computingTime, "warmUpTank", steps),
		});
		const methods = [...skyMethods(request.sky, plan.plant.site), ...day.outcome.methods, ...day.methods];
		return {
			...wireOutcome(plan, buildOf(request), air, { ...day.outcome, methods }),
			...(day.range && { range: day.range }),
			assumed: [...defaults, ...day.assumed, ...filled],
		};
	},
});

type Answer = z.input<typeof WarmUpResponse>;

function wireOutcome(
	plan: WarmUpPlan,
	build: Build,
	air: DayAir,
	outcome: DayOutcome,
): Omit<Answer, "assumed"> {
	const { run, plant, task } = plan;
	const circumstances = { plant, build, task, air, outcome };
	return {
		...wireTarget(plan, outcome),
		timeZone: run.zone,
		startTime: isoText(run.start, run.zone),
		endTime: isoText(run.end, run.zone),
		...wireTank(outcome, run.zone),
		...wireLoop(outcome),
		deliveredKwh: fromSi.kilowattHours(outcome.deliveredHeat),
		unmetKwh: fromSi.kilowattHours(outcome.unmetHeat),
		energyBalance: wireBalance(outcome.balance),
		series: wireSeries(outcome.series, run.zone, task.seriesStep),
		design: wireDesign(plant, task),
		cautions: cautionsOf(circumstances).map(wireCaution),
		methods: outcome.methods.map((method) => ({ ...method })),
	};
}

type Target = Pick<Answer, "outcome" | "timeToTargetMin" | "targetTime" | "reason">;

function wireTarget({ run, plant, task }: WarmUpPlan, outcome: DayOutcome): Target {
	if (outcome.shortfall !== undefined)
		return { outcome: "notReached", reason: wireReason(outcome.shortfall, plant, task, outcome) };
	return {
		outcome: "reached",
		timeToTargetMin: fromSi.minutes(outcome.targetTime - run.start),
		targetTime: isoText(outcome.targetTime, run.zone),
	};
}

function wireTank(outcome: DayOutcome, zone: string) {
	return {
		endTemperatureC: fromSi.celsius(outcome.endMean),
		topTemperatureC: fromSi.celsius(outcome.endTop),
		layerTemperaturesC: Array.from(outcome.endTemperatures, fromSi.celsius),
		boilingPointC: fromSi.celsius(outcome.boilingPoint),
		boils: outcome.boils,
		...(outcome.boils && { boilTime: isoText(outcome.boilTime, zone) }),
		usableLitresAt40C: fromSi.litres(outcome.usableVolume),
		meanPowerToWaterW: outcome.meanPowerToWater,
		overallEfficiency: outcome.overallEfficiency,
	};
}

function wireLoop(outcome: DayOutcome) {
	return {
		maximumOilTemperatureC: fromSi.celsius(outcome.maximumOil),
		maximumFilmTemperatureC: fromSi.celsius(outcome.maximumFilm),
		stagnationTemperatureC: fromSi.celsius(outcome.stagnation),
		pumpTimeMin: fromSi.minutes(outcome.pumpTime),
		...(outcome.pumpTime > 0 && { leastFlowLPerMin: fromSi.litresPerMinute(outcome.leastFlow) }),
		starvedTimeMin: fromSi.minutes(outcome.starvedTime),
		turnedAwayTimeMin: fromSi.minutes(outcome.turnedAwayTime),
	};
}
