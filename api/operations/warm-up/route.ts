import type { z } from "@hono/zod-openapi";
import { cautionsOf, type DayOutcome, warmUpDay } from "../../../src/index.ts";
import { hostel } from "../../demo/hostel.ts";
import { dayAir } from "../../parts/day-air.ts";
import { type DayPlan, dayCaseOf, dayDesigns, dayPlan } from "../../parts/day-plan.ts";
import { WarmUpRequest } from "../../parts/day-request.ts";
import { DAY_RULES } from "../../parts/day-rules.ts";
import { wireDesign } from "../../parts/design.ts";
import { dayWithRange, rangePlan } from "../../parts/range.ts";
import { wireReason } from "../../parts/reason.ts";
import type { Run } from "../../parts/run.ts";
import { Spreads } from "../../parts/spread.ts";
import { isoText } from "../../wire/time-zone.ts";
import { fromSi, toSi } from "../../wire/units.ts";
import { rangeWithin } from "../cost.ts";
import { marchAdvice, marchFactor } from "../march-cost.ts";
import { operation } from "../operation.ts";
import { wireBalance } from "./energy-balance.ts";
import { warmUpForms } from "./forms.ts";
import { WarmUpResponse } from "./response.ts";
import { wireSeries } from "./series.ts";

const MOST_DAYS = 40; // computed for a range at most

export const warmUp = operation({
	method: "post",
	path: "/v1/tank/warm-up",
	operationId: "warmUpTank",
	tag: "Tank",
	summary: "Warm-up of a tank through one day",
	description: [
		"Simulates one day of a plant, from the sun to the tap. The response states when the water reaches the target, its final temperature, whether it boils,",
		"the litres available at the tap, the energy balance and the cautions to observe. Only site, date, dish size and tank volume are required.",
		"A polar night, a sun too low or a target above boiling returns 200 with a `reason`, not an error.",
	].join("\n"),
	input: WarmUpRequest,
	output: WarmUpResponse,
	examples: {
		hostel: { summary: hostel.summary, value: hostel.request },
		least: {
			summary: "The smallest valid request",
			value: {
				site: { latitude: 28.6, longitude: 77.2, elevationM: 216 },
				date: "2025-02-15",
				dish: { diameterM: 1.4 },
				tank: { volumeL: 100 },
			},
		},
	},
	maxAge: 0,
	cost: 25,
	rangeCost: 25,
	costFactor: marchFactor,
	costAdvice: marchAdvice,
	forms: warmUpForms,
	designs: dayDesigns,
	rules: DAY_RULES,
	plan: (request, designs, sent) => {
		const { value: day, assumed } = dayPlan(request, toSi.minutes(request.seriesStepMin), designs);
		const air = dayAir(request.sky, sent);
		return { value: { ...day, air, range: rangePlan(request, sent, Spreads) }, assumed };
	},
	outcome: (plan, { settings }) =>
		dayWithRange(plan.range, {
			stated: dayCaseOf(plan),
			outcome: () => warmUpDay(plan.plant, plan.weather, plan.task),
			requireSpare: (steps) => rangeWithin(settings.computingTime, MOST_DAYS, steps),
		}),
	answer: (plan, { outcome, range }) => ({
		...wireTarget(plan, outcome),
		...wireTimes(plan.run),
		...wireTank(outcome, plan.run.timeZone),
		...wireLoop(outcome),
		deliveredKwh: fromSi.kilowattHours(outcome.deliveredHeat),
		unmetKwh: fromSi.kilowattHours(outcome.unmetHeat),
		energyBalance: wireBalance(outcome.balance),
		...(range && { range }),
		series: wireSeries(outcome.series, plan.run.timeZone, plan.task.seriesStep),
		design: wireDesign(plan.plant, plan.task),
	}),
	cautions: ({ plant, build, task, air }, { outcome }) => cautionsOf({ plant, build, task, air, outcome }),
	methods: ({ skyMethods }, day) => [...skyMethods, ...day.outcome.methods, ...day.methods],
	assumed: ({ assumed }) => assumed,
});

type Answer = z.input<typeof WarmUpResponse>;

const wireTimes = ({ timeZone, start, end }: Run) => ({
	timeZone,
	startTime: isoText(start, timeZone),
	endTime: isoText(end, timeZone),
});

type Target = Pick<Answer, "outcome" | "timeToTargetMin" | "targetTime" | "reason">;

function wireTarget({ run, plant, task }: DayPlan, outcome: DayOutcome): Target {
	if (outcome.shortfall !== undefined)
		return { outcome: "notReached", reason: wireReason(outcome.shortfall, plant, task, outcome) };
	return {
		outcome: "reached",
		timeToTargetMin: fromSi.minutes(outcome.targetTime - run.start),
		targetTime: isoText(outcome.targetTime, run.timeZone),
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
