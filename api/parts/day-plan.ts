import {
	AS_CORRELATED,
	type Build,
	type Coil,
	type DayCase,
	type DaySky,
	type Dish,
	designCoil,
	designPlant,
	designTank,
	type Method,
	type Plant,
	type SparsePlant,
	stepTimes,
	type Tank,
	type Task,
	type Weather,
	weatherUnder,
} from "../../src/index.ts";
import type { Assumed, Completed } from "../wire/defaults.ts";
import { toSi } from "../wire/units.ts";
import { wireAssumed } from "./assumption.ts";
import { buildOf } from "./build.ts";
import { sparseCoil } from "./coil.ts";
import type { DayRequest } from "./day-request.ts";
import { dishOf, sparseDish } from "./dish.ts";
import { coreDraws } from "./draw.ts";
import { sparseLoop } from "./loop.ts";
import { sparseReceiver } from "./receiver.ts";
import { type Run, runOf } from "./run.ts";
import { coreSite } from "./site.ts";
import { coreSky, skyMethods } from "./sky.ts";
import { sparseTank, tankHolds } from "./tank.ts";

/** The parts designed from a day's request, which its rules check. */
export interface DayDesigns {
	readonly run: Run;
	readonly runAssumed: readonly Assumed[];
	readonly dish: Dish | undefined; // if the request has no single size of it
	readonly tank: Tank;
	readonly coil: Coil | undefined; // if it is upside down, or its tank contradictory
}

export function dayDesigns(request: DayRequest): DayDesigns {
	const run = runOf(request);
	const tank = designTank(sparseTank(request.tank), toSi.celsius(request.draw.mainsTemperatureC)).design;
	const { coil } = request;
	const fits = coil.bottomHeight < coil.topHeight && tankHolds(request, { tank });
	return {
		run: run.value,
		runAssumed: run.assumed,
		dish: dishOf(request.dish),
		tank,
		coil: fits ? designCoil(sparseCoil(coil), tank).design : undefined,
	};
}

/** A day's request for the core. */
export interface DayPlan {
	readonly run: Run;
	readonly plant: Plant;
	readonly task: Task;
	readonly sky: DaySky;
	readonly weather: Weather;
	readonly build: Build;
	readonly skyMethods: readonly Method[]; // models of its sun
}

/** @param seriesStep  between rows of the day's series [s] */
export function dayPlan(
	request: DayRequest,
	seriesStep: number,
	{ run, runAssumed }: Pick<DayDesigns, "run" | "runAssumed">,
): Completed<DayPlan> {
	const { design: plant, assumed } = designPlant(sparsePlant(request));
	const draws = coreDraws(request.draw, request.date, run);
	const sky = coreSky(request.sky);
	const task: Task = {
		start: run.start,
		end: run.end,
		step: request.stepS,
		seriesStep,
		target: { temperature: toSi.celsius(request.targetTemperatureC), at: request.targetAt },
		draws: draws.value,
		mains: toSi.celsius(request.draw.mainsTemperatureC),
	};
	return {
		value: {
			...{ run, plant, task },
			sky: sky.value,
			weather: weatherUnder(sky.value, plant.site, stepTimes(task)),
			build: buildOf(request),
			skyMethods: skyMethods(request.sky, plant.site),
		},
		assumed: [...runAssumed, ...wireAssumed(assumed), ...draws.assumed, ...sky.assumed],
	};
}

/** The day of a plan as ranges and improvements vary it. */
export const dayCaseOf = ({ plant, sky, task }: DayPlan): DayCase => ({
	plant,
	factors: AS_CORRELATED,
	sky,
	task,
});

/** The plant of a request for the core, with omitted values left to the design. */
export function sparsePlant(request: DayRequest): SparsePlant {
	return {
		site: coreSite(request.site),
		dish: sparseDish(request.dish),
		receiver: sparseReceiver(request.receiver),
		loop: sparseLoop(request.loop),
		coil: sparseCoil(request.coil),
		tank: sparseTank(request.tank),
		mains: toSi.celsius(request.draw.mainsTemperatureC),
	};
}
