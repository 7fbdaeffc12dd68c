import type { DayOutcome, DaySeries } from "../plant/outcome.ts";
import type { Plant, Task } from "../plant/plant.ts";
import type { Answer, Values } from "./question.ts";

/** Answers of a day for which ranges are computed. */
export interface DayAnswers {
	readonly timeToTarget: number; // [s]; NaN where the target is not reached
	readonly endTemperature: number; // mean of the tank [K]
	readonly usableVolume: number; // at 40 °C [m³]
	readonly toWater: number; // [J]
}

export type DayAnswer = keyof DayAnswers;

export function dayAnswers(outcome: DayOutcome, task: Task): DayAnswers {
	return {
		timeToTarget: outcome.targetTime - task.start,
		endTemperature: outcome.endMean,
		usableVolume: outcome.usableVolume,
		toWater: outcome.balance.toWater,
	};
}

/** The answers, each with the margins within which it is smooth.
 *  @param layers  of the tank */
export function answersOfDay(layers: number): readonly (Answer & { readonly name: DayAnswer })[] {
	const limits = ["boiling", "limit"];
	return [
		{ name: "timeToTarget", margins: ["target", "timeLeft", "limitBefore"] },
		{ name: "endTemperature", margins: limits },
		{ name: "usableVolume", margins: [...limits, ...Array.from({ length: layers }, (_, i) => layer(i))] },
		{ name: "toWater", margins: limits },
	];
}

const USABLE = 313.15; // [K] reference of usable litres
const NEAR = 1; // [K] below a limit at which the controller may act
const SMALLEST = 1e-3; // [K] margin of a reached or missed target where the rows of the series do not show it

/** The column of a target's temperature; the outlet has no column, and the top is the closest. */
const TARGET_COLUMN = { mean: "tankMean", top: "tankTop", outlet: "tankTop" } as const satisfies Record<
	Task["target"]["at"],
	keyof DaySeries
>;

const layer = (i: number) => `layer${i}`;

/** Answers and margins of a day. The two sides of a margin can differ in unit: on one side the remaining difference [K], on the other
 *  a time or an amount [s or J]; it is only propagated on one side. */
export function dayValues(plant: Plant, task: Task, outcome: DayOutcome): Values {
	const { highLimit, oilLimit } = plant.loop.control;
	const { series, boilingPoint } = outcome;
	const highest = hottest(series[TARGET_COLUMN[task.target.at]]);
	const above = highest - task.target.temperature;
	const top = hottest(series.tankTop);
	const before = outcome.reached
		? hottest(series.tankTop.filter((_, row) => series.time[row]! <= outcome.targetTime))
		: top;
	const oil = outcome.maximumOil - oilLimit;
	return {
		...dayAnswers(outcome, task),
		target: outcome.reached ? Math.max(SMALLEST, above) : Math.min(-SMALLEST, above),
		timeLeft: outcome.reached ? task.end - outcome.targetTime : -1,
		limitBefore: Math.max(before - Math.min(boilingPoint, highLimit), oil) + NEAR,
		boiling: outcome.boils ? outcome.balance.vented : top - boilingPoint,
		limit: outcome.turnedAwayTime > 0 ? outcome.turnedAwayTime : Math.max(top - highLimit, oil),
		...Object.fromEntries(Array.from(outcome.endTemperatures, (t, i) => [layer(i), t - USABLE])),
	};
}

function hottest(column: readonly number[]): number {
	return column.reduce((most, t) => Math.max(most, t), 0);
}
