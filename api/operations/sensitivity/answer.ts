import type { z } from "@hono/zod-openapi";
import {
	type Improvement as CoreImprovement,
	cautionsOf,
	type DayCase,
	type DayOutcome,
	type DomainError,
	type Gain,
	type GainRange,
	type ImprovementId,
	worthOrder,
} from "../../../src/index.ts";
import { wireCaution } from "../../parts/caution.ts";
import type { DayPlan } from "../../parts/day-plan.ts";
import { fromSi } from "../../wire/units.ts";
import { changesOf } from "./changes.ts";
import { wireGainRange } from "./gain-range.ts";
import { RANKED_QUANTITIES, type SensitivityPlan } from "./plan.ts";
import { wireRefusal } from "./refusal.ts";
import type { Ranking } from "./request.ts";
import type { SensitivityResponse } from "./response.ts";
import { DESCRIPTIONS, IDLE_REASONS } from "./words.ts";

type Answer = z.input<typeof SensitivityResponse>;
type Listed = Answer["improvements"][number];
type Refused = Answer["refused"][number];

/** The base plant that improvements are compared with. */
interface Base {
	readonly plan: SensitivityPlan;
	readonly outcome: DayOutcome;
	readonly ranges: ReadonlyMap<ImprovementId, GainRange> | undefined; // where requested
}

export function wireDay(outcome: DayOutcome, start: number): Answer["base"] {
	return {
		outcome: outcome.reached ? "reached" : "notReached",
		...(outcome.reached && { timeToTargetMin: fromSi.minutes(outcome.targetTime - start) }),
		endTemperatureC: fromSi.celsius(outcome.endMean),
		usableLitresAt40C: fromSi.litres(outcome.usableVolume),
		toWaterKwh: fromSi.kilowattHours(outcome.balance.toWater),
		turnedAwayTimeMin: fromSi.minutes(outcome.turnedAwayTime),
	};
}

/** The ranked improvements, those that do not apply to the plant, and those outside the models. */
export function wireImprovements(
	found: readonly CoreImprovement[],
	base: Base,
): Pick<Answer, "improvements" | "notApplicable" | "refused"> {
	const places = { litres: placesBy(found, "litres"), minutes: placesBy(found, "minutes") };
	const improvements: Listed[] = [];
	const notApplicable: Answer["notApplicable"] = [];
	const refused: Refused[] = [];
	for (const one of found) {
		const { id } = one;
		if (one.outcome === "idle") notApplicable.push({ id, code: one.why, message: IDLE_REASONS[one.why] });
		else if (one.outcome === "refused") refused.push(wireRefused(id, one.of, one.error, base));
		else {
			const ranks = { litres: places.litres.indexOf(id) + 1, minutes: places.minutes.indexOf(id) + 1 };
			improvements.push(wireGain(one, base, ranks));
		}
	}
	return { improvements, notApplicable, refused };
}

function wireRefused(
	id: ImprovementId,
	of: DayCase | undefined,
	error: DomainError,
	{ plan }: Base,
): Refused {
	return { id, ...(of && { changes: wireChanges(id, of, plan) }), ...wireRefusal(error) };
}

const wireChanges = (id: ImprovementId, of: DayCase, { plant, task }: DayPlan): Listed["changes"] =>
	changesOf(id, plant, of.plant, task).map((change) => ({ ...change }));

function placesBy(found: readonly CoreImprovement[], ranking: Ranking): readonly string[] {
	return [...found].sort((a, b) => worthOrder(a, b, RANKED_QUANTITIES[ranking])).map(({ id }) => id);
}

function wireGain(one: Gain, base: Base, ranks: Listed["ranks"]): Listed {
	const { plan } = base;
	const price = plan.prices?.[one.id];
	const gains = wireGains(one.gains);
	return {
		id: one.id,
		message: DESCRIPTIONS[one.id],
		how: one.how,
		changes: wireChanges(one.id, one.of, plan),
		day: wireDay(one.day, plan.task.start),
		gains,
		...wireRanged(base.ranges?.get(one.id)),
		reaches: one.reaches,
		ranks,
		...(price !== undefined && { cost: costOf(price, gains) }),
		newCautions: one.how === "made" ? newCautions(one, base) : [],
	};
}

function wireRanged(range: GainRange | undefined): Pick<Listed, "range" | "rangeRefused" | "aheadOfNext"> {
	if (range === undefined) return {};
	if (range.outcome === "refused") return { rangeRefused: wireRefusal(range.error) };
	return { range: wireGainRange(range), ...(range.ahead && { aheadOfNext: { ...range.ahead } }) };
}

function wireGains({ timeToTarget, endTemperature, usableVolume, toWater }: Gain["gains"]): Listed["gains"] {
	return {
		...(!Number.isNaN(timeToTarget) && { timeToTargetMin: fromSi.minutes(timeToTarget) }),
		endTemperatureK: endTemperature,
		usableLitresAt40C: fromSi.litres(usableVolume),
		toWaterKwh: fromSi.kilowattHours(toWater),
	};
}

const LEAST = 1e-3; // litre, minute, kelvin or kilowatt-hour; a smaller gain counts as none, so its unit cost is omitted

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

/** Cautions that the improved plant raises and the base plant does not. */
function newCautions(one: Gain, { plan, outcome }: Base): Listed["newCautions"] {
	const { task, air, build } = plan;
	const before = cautionsOf({ plant: plan.plant, build, task, air, outcome }).map(({ code }) => code);
	return cautionsOf({ plant: one.of.plant, build, task, air, outcome: one.day })
		.filter(({ code }) => !before.includes(code))
		.map(wireCaution);
}
