import { ICE_POINT } from "../constants.ts";
import { linearInterpolation } from "../numeric/interpolate.ts";
import { factoredDay } from "../plant/day.ts";
import type { DayOutcome } from "../plant/outcome.ts";
import type { Plant, Task } from "../plant/plant.ts";
import { stepTimes } from "../plant/times.ts";
import { measuredWeather } from "../sky/measured-weather.ts";
import type { Weather } from "../sky/weather.ts";
import { asBuiltPlant, type Departures } from "./as-built-plant.ts";
import type { Column, TestRun } from "./run.ts";

/** Sky of a run, all three columns. */
export interface RunSky {
	readonly beam: Column; // [N] [W/m²]
	readonly ambient: Column; // [N] [K]
	readonly wind: Column; // [N] [m/s]
}

/** Predicted result of a plant in a run. */
export interface PredictedRun {
	readonly run: TestRun; // the same rows with the predicted water temperature
	readonly outcome: DayOutcome;
	readonly task: Task;
	readonly weather: Weather;
}

const STEP = 60; // [s] of the simulation, with an error below 0.5 % of the time to a target

/** Simulation of a plant under the sky of a run, from the first water temperature of the run.
 *  Assumes the loop starts at air temperature with the pump off, and the dish is turned away where the pump was off;
 *  only beam is considered, because a dish uses no diffuse light. */
export function predictedRun(plant: Plant, departures: Departures, run: TestRun, sky: RunSky): PredictedRun {
	const { time } = run;
	const task: Task = {
		start: time[0]!,
		end: time[time.length - 1]!,
		step: STEP,
		seriesStep: STEP,
		target: { temperature: Number.POSITIVE_INFINITY, at: "mean" }, // none: the simulation continues to the last row
		draws: [],
		mains: ICE_POINT, // nothing is drawn
	};
	const beam = Float64Array.from(time, (_, row) => (run.pumpOn?.[row] === false ? 0 : sky.beam[row]!));
	const rows = { ...sky, beam, time, diffuse: new Float64Array(time.length), global: undefined };
	const weather = measuredWeather(plant.site, rows, stepTimes(task));
	const departed = asBuiltPlant(plant, departures);
	const outcome = factoredDay(departed.plant, departed.factors, weather, task);
	const { time: instants, tankMean } = outcome.series;
	const mean = Float64Array.from(time, (instant) => linearInterpolation(instants, tankMean, instant));
	return { run: { ...run, thermometers: [mean] }, outcome, task, weather };
}
