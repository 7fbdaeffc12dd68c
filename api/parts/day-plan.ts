import {
	AS_CORRELATED,
	boilingPoint,
	boreVolume,
	type DayCase,
	type DaySky,
	fluidById,
	hasTube,
	marchTimes,
	type Plant,
	standardPressure,
	type Task,
	type Weather,
	weatherUnder,
} from "../../src/index.ts";
import type { Fill } from "../wire/defaults.ts";
import { toSi } from "../wire/units.ts";
import { coreCoil } from "./coil.ts";
import type { WarmUpRequest } from "./day-request.ts";
import { coreDish } from "./dish.ts";
import { coreDraws } from "./draw.ts";
import { coreLoop } from "./loop.ts";
import { coreReceiver } from "./receiver-design.ts";
import { type Run, runOf } from "./run.ts";
import { coreSite } from "./site.ts";
import { coreTank, tankBoilingPoint } from "./tank.ts";
import { coreSky } from "./weather.ts";

/** A request as the core wants it. */
export interface WarmUpPlan {
	readonly run: Run;
	readonly plant: Plant;
	readonly task: Task;
	readonly sky: DaySky;
	readonly weather: Weather;
}

export function warmUpPlan(request: WarmUpRequest, fill: Fill): WarmUpPlan {
	const run = runOf(request, fill);
	const plant = plantOf(request, fill);
	const task: Task = {
		start: run.start,
		end: run.end,
		step: request.stepS,
		seriesStep: toSi.minutes(request.seriesStepMin),
		target: { temperature: toSi.celsius(request.targetTemperatureC), at: request.targetAt },
		draws: coreDraws(request.draw, request.date, run, fill),
		mains: toSi.celsius(request.draw.mainsTemperatureC),
	};
	const sky = coreSky(request.sky, fill);
	return { run, plant, task, sky, weather: weatherUnder(sky, plant.site, marchTimes(task)) };
}

/** The day of a plan as ranges and improvements vary it. */
export const dayCaseOf = ({ plant, sky, task }: WarmUpPlan): DayCase => ({
	plant,
	factors: AS_CORRELATED,
	sky,
	task,
});

/** Everything that stands still while the day passes. */
export function plantOf(request: WarmUpRequest, fill: Fill): Plant {
	const site = coreSite(request.site);
	const dish = coreDish(request.dish, fill);
	const tank = coreTank(request.tank, request.draw.mainsTemperatureC, fill);
	const openBoiling = boilingPoint(standardPressure(site.elevation));
	const receiver = coreReceiver(request.receiver, dish, fluidById(request.loop.fluid), site.elevation, fill);
	const coil = coreCoil(request.coil, tank, fill);
	const elsewhere = boreVolume(coil) + (hasTube(receiver) ? boreVolume(receiver.tube) : 0);
	const boiling = tankBoilingPoint(tank, site.elevation);
	const loop = coreLoop(request.loop, elsewhere, boiling, openBoiling, fill);
	return { site, dish, receiver, loop, coil, tank };
}
