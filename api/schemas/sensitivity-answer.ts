import type { z } from "@hono/zod-openapi";
import {
	type Build,
	type Improvement as CoreImprovement,
	cautionsOf,
	type DayOutcome,
	worthOrder,
} from "../../src/index.ts";
import { fromSi } from "../units.ts";
import { wireCaution } from "./caution.ts";
import { changesOf } from "./sensitivity-changes.ts";
import type { Prices, Ranking } from "./sensitivity-request.ts";
import type { SensitivityResponse } from "./sensitivity-response.ts";
import { DONE, WHY_NOT } from "./sensitivity-words.ts";
import type { WarmUpPlan } from "./warm-up-plan.ts";

type Answer = z.input<typeof SensitivityResponse>;
type Gain = Extract<CoreImprovement, { outcome: "gains" }>;
type Listed = Answer["improvements"][number];

/** The core's answer that each ranking goes by. */
export const ANSWERS = {
	litres: "usableVolume",
	minutes: "timeToTarget",
	temperature: "endTemperature",
	heat: "toWater",
} as const satisfies Record<Ranking, keyof Gain["gains"]>;

/** What the improvements are held against. */
export interface Standing {
	readonly plan: WarmUpPlan;
	readonly build: Build;
	readonly outcome: DayOutcome;
	readonly prices: Prices | undefined;
}

export function wireDay(outcome: DayOutcome, start: number): Answer["base"] {
	return {
		outcome: outcome.reached ? "reached" : "notReached",
		...(outcome.reached && { timeToTargetMin: fromSi.minutes(outcome.targetTime - start) }),
		endTemperatureC: fromSi.celsius(outcome.endMean),
		usableLitresAt40C: fromSi.litres(outcome.usableVolume),
		toWaterKwh: fromSi.kilowattHours(outcome.balance.toWater),
	};
}

/** The improvements in their order, and apart from them those that cannot be made. */
export function wireImprovements(
	found: readonly CoreImprovement[],
	standing: Standing,
): Pick<Answer, "improvements" | "notApplicable"> {
	const places = { litres: placesBy(found, "litres"), minutes: placesBy(found, "minutes") };
	return {
		improvements: found.flatMap((one) =>
			one.outcome === "gains"
				? [
						wireGain(one, standing, {
							litres: places.litres.indexOf(one.id) + 1,
							minutes: places.minutes.indexOf(one.id) + 1,
						}),
					]
				: [],
		),
		notApplicable: found.flatMap((one) =>
			one.outcome === "idle" ? [{ id: one.id, code: one.why, message: WHY_NOT[one.why] }] : [],
		),
	};
}

function placesBy(found: readonly CoreImprovement[], ranking: Ranking): readonly string[] {
	return [...found].sort((a, b) => worthOrder(a, b, ANSWERS[ranking])).map(({ id }) => id);
}

function wireGain(one: Gain, standing: Standing, ranks: Listed["ranks"]): Listed {
	const { plan, prices } = standing;
	const price = prices?.[one.id];
	const gains = wireGains(one.gains);
	return {
		id: one.id,
		message: DONE[one.id],
		how: one.how,
		changes: changesOf(one.id, plan.plant, one.of.plant, plan.task).map((change) => ({ ...change })),
		day: wireDay(one.day, plan.task.start),
		gains,
		reaches: one.reaches,
		ranks,
		...(price !== undefined && { cost: costOf(price, gains) }),
		newCautions: one.how === "made" ? newCautions(one, standing) : [],
	};
}

function wireGains({ timeToTarget, endTemperature, usableVolume, toWater }: Gain["gains"]): Listed["gains"] {
	return {
		...(!Number.isNaN(timeToTarget) && { timeToTargetMin: fromSi.minutes(timeToTarget) }),
		endTemperatureK: endTemperature,
		usableLitresAt40C: fromSi.litres(usableVolume),
		toWaterKwh: fromSi.kilowattHours(toWater),
	};
}

const LEAST = 1e-3; // of a litre, minute, kelvin or kilowatt-hour; a smaller gain is none that money could be held against

function costOf(price: number, gains: Listed["gains"]): NonNullable<Listed["cost"]> {
	const per = (name: string, gain: number | undefined) =>
		gain !== undefined && gain > LEAST ? { [name]: price / gain } : {};
	return {
		price,
		...per("perLitre", gains.usableLitresAt40C),
		...per("perMinute", gains.timeToTargetMin),
		...per("perKelvin", gains.endTemperatureK),
		...per("perKwh", gains.toWaterKwh),
	};
}

/** Cautions that only the changed plant raises. */
function newCautions(one: Gain, { plan, build, outcome }: Standing): Listed["newCautions"] {
	const { task, weather } = plan;
	const before = cautionsOf({ plant: plan.plant, build, task, weather, outcome }).map(({ code }) => code);
	return cautionsOf({ plant: one.of.plant, build, task, weather, outcome: one.day })
		.filter(({ code }) => !before.includes(code))
		.map(wireCaution);
}
