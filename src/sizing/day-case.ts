import { factoredDay } from "../plant/day.ts";
import type { ModelFactors } from "../plant/factors.ts";
import type { DayOutcome } from "../plant/outcome.ts";
import type { Plant, Task } from "../plant/plant.ts";
import { marchTimes } from "../plant/times.ts";
import { type ClearSky, clearWeather } from "../sky/clear-weather.ts";
import { type MeasuredSky, measuredWeather } from "../sky/measured-weather.ts";

/** A sky by what it is made from, so that it can be varied. */
export type DaySky =
	| { readonly kind: "clear"; readonly sky: ClearSky }
	| { readonly kind: "measured"; readonly sky: MeasuredSky };

/** Everything a day's answer follows from. */
export interface DayCase {
	readonly plant: Plant;
	readonly factors: ModelFactors;
	readonly sky: DaySky;
	readonly task: Task;
}

/** The day of a case: one march. */
export function dayOf({ plant, factors, sky, task }: DayCase): DayOutcome {
	const times = marchTimes(task);
	const weather =
		sky.kind === "clear"
			? clearWeather(plant.site, sky.sky, times)
			: measuredWeather(plant.site, sky.sky, times);
	return factoredDay(plant, factors, weather, task);
}
