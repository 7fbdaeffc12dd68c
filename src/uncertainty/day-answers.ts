import type { DayOutcome, DaySeries } from "../plant/outcome.ts";
import type { Plant, Task } from "../plant/plant.ts";
import type { Answer, Values } from "./question.ts";

/** What is asked of a day. */
export interface DayAnswers {
	readonly timeToTarget: number; // [s]; NaN where it is not reached
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

/** The answers, each with the margins that keep it smooth.
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

const USABLE = 313.15; // [K] as usable litres are counted
const NEAR = 1; // [K] below a limit the controller already counts as at it
const HAIR = 1e-3; // [K] by which a target counts as reached, or as missed, where the series' rows don't show it

/** The column in which a target is watched; the outlet has none of its own, and the top is the nearest. */
const WATCHED = { mean: "tankMean", top: "tankTop", outlet: "tankTop" } as const satisfies Record<
	Task["target"]["at"],
	keyof DaySeries
>;

const layer = (i: number) => `layer${i}`;

/** Answers and margins of a day. A margin's two sides may differ in unit: on one the distance that is left [K], on the other how
 *  long or how much [s or J]; it is only ever propagated on one of them. */
export function dayValues(plant: Plant, task: Task, outcome: DayOutcome): Values {
	const { highLimit, oilLimit } = plant.loop.control;
	const { series, boilingPoint } = outcome;
	const watched = hottest(series[WATCHED[task.target.at]]);
	const above = watched - task.target.temperature;
	const top = hottest(series.tankTop);
	const before = outcome.reached
		? hottest(series.tankTop.filter((_, row) => series.time[row]! <= outcome.targetTime))
		: top;
	const oil = outcome.maximumOil - oilLimit;
	return {
		...dayAnswers(outcome, task),
		target: outcome.reached ? Math.max(HAIR, above) : Math.min(-HAIR, above),
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
