import { factoredDay } from "../plant/day.ts";
import type { ModelFactors } from "../plant/factors.ts";
import type { DayOutcome } from "../plant/outcome.ts";
import type { Plant, Task } from "../plant/plant.ts";
import { stepTimes } from "../plant/times.ts";
import { type ClearSky, clearWeather } from "../sky/clear-weather.ts";
import { type MeasuredSky, measuredWeather } from "../sky/measured-weather.ts";
import type { Site } from "../sky/site.ts";
import type { Weather } from "../sky/weather.ts";

/** Source data of a sky, which can be varied. */
export type DaySky =
	| { readonly kind: "clear"; readonly sky: ClearSky }
	| { readonly kind: "measured"; readonly sky: MeasuredSky };

/** All inputs of a day. */
export interface DayCase {
	readonly plant: Plant;
	readonly factors: ModelFactors;
	readonly sky: DaySky;
	readonly task: Task;
}

/** Weather of a sky at given instants. */
export function weatherUnder(sky: DaySky, site: Site, times: Float64Array): Weather {
	switch (sky.kind) {
		case "clear":
			return clearWeather(site, sky.sky, times);
		case "measured":
			return measuredWeather(site, sky.sky, times);
		default:
			return sky satisfies never;
	}
}

/** The day of a case: one simulation. */
export function dayOf({ plant, factors, sky, task }: DayCase): DayOutcome {
	return factoredDay(plant, factors, weatherUnder(sky, plant.site, stepTimes(task)), task);
}
