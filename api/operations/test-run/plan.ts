import {
	apertureArea,
	type Dish,
	type Drawing,
	declination,
	designPlant,
	designTank,
	type Fluid,
	type FluidId,
	fluidById,
	practice,
	type Tank,
	type TestRun,
} from "../../../src/index.ts";
import { wireAssumed } from "../../parts/assumption.ts";
import { buildOf } from "../../parts/build.ts";
import { type DayDesigns, dayDesigns, sparsePlant } from "../../parts/day-plan.ts";
import { WarmUpRequest } from "../../parts/day-request.ts";
import { dishOf } from "../../parts/dish.ts";
import { timeZoneOf } from "../../parts/site.ts";
import { sparseTank } from "../../parts/tank.ts";
import { type Assumed, appliedDefaults, type Completed, sentOr } from "../../wire/defaults.ts";
import { dateOf } from "../../wire/time-zone.ts";
import { toSi } from "../../wire/units.ts";
import type { TestRunRequest } from "./request.ts";

type Column = readonly number[];

/** The columns of the tank's thermometers, top first. */
export function thermometersOf({ tankTemperatureC }: TestRunRequest["run"]): readonly Column[] {
	return typeof tankTemperatureC[0] === "number"
		? [tankTemperatureC as Column]
		: (tankTemperatureC as Column[]);
}

/** Time of each row, Unix time [s]. */
export function runTimes({ time }: TestRunRequest["run"]): number[] {
	return time.map((text) => Date.parse(text) / 1000);
}

/** Whether plant and sky are known well enough to predict the run. */
function isComparable({ site, dish, run }: TestRunRequest): boolean {
	return Boolean(site && dish && run.beamIrradianceWPerM2 && run.ambientC !== undefined);
}

/** The run's plant as a warm-up request for the day of the run. */
interface PlantRequest {
	readonly request: WarmUpRequest;
	readonly designs: DayDesigns;
	readonly assumed: readonly Assumed[]; // for parts that the run's request omits entirely
}

/** The designs that the rules check and the plan uses. */
export interface RunDesigns {
	readonly dish: Dish | undefined; // undefined where absent or without a single size
	readonly tank: Tank; // as the run measures it: one mixed layer
	readonly tankAssumed: readonly Assumed[];
	readonly plant: PlantRequest | undefined; // undefined where too little is known to predict the run
}

/** @param sent  the raw request */
export function runDesigns(request: TestRunRequest, sent: unknown): RunDesigns {
	const columns = thermometersOf(request.run);
	const start = columns.reduce((sum, column) => sum + column[0]!, 0) / columns.length;
	const mixed = { ...request.tank, nodes: 1, startTemperatureC: start };
	const tank = designTank(sparseTank(mixed), toSi.celsius(start));
	return {
		dish: request.dish && dishOf(request.dish),
		tank: tank.design,
		tankAssumed: wireAssumed(tank.assumed),
		plant: isComparable(request) ? plantRequest(request, sent) : undefined,
	};
}

const PARTS = ["receiver", "loop", "coil"] as const;

/** Omitted parts have the warm-up's defaults; the tank's start temperature comes from the run's rows. */
function plantRequest(request: TestRunRequest, sent: unknown): PlantRequest {
	const { site, dish, tank, receiver, loop, coil } = sent as Record<string, unknown>;
	const { startTemperatureC: _, ...started } = tank as Record<string, unknown>;
	const date = dateOf(runTimes(request.run)[0]!, timeZoneOf(request.site!).value);
	const body = { site, date, dish, tank: started, receiver, loop, coil };
	const warmUp = WarmUpRequest.parse(body);
	const omitted = PARTS.filter((name) => request[name] === undefined);
	return {
		request: warmUp,
		designs: dayDesigns(warmUp),
		assumed: appliedDefaults(WarmUpRequest, body, warmUp).filter(({ pointer }) =>
			omitted.some((name) => pointer.startsWith(`/${name}/`)),
		),
	};
}

/** A measured run in the core's terms, with its plant where enough is known to predict the run. */
export interface TestRunPlan {
	readonly run: TestRun;
	readonly drawing: Drawing | undefined;
	readonly elevation: number; // [m]
	readonly timeZone: string;
	readonly fluid: Fluid; // in the loop
}

export function testRunPlan(request: TestRunRequest, designs: RunDesigns): Completed<TestRunPlan> {
	const { plant } = designs;
	const run = coreRun(request, designs);
	const zone = request.site ? timeZoneOf(request.site) : { value: "UTC", assumed: [] };
	const drawing = plant && drawingOf(request, plant.request, run);
	const elevation = sentOr(request.site?.elevationM, "/site/elevationM", SEA_LEVEL, AT_SEA_LEVEL);
	const fluid = fluidOf(request, plant?.request);
	return {
		value: {
			run,
			drawing: drawing?.value,
			elevation: elevation.value,
			timeZone: zone.value,
			fluid: fluidById(fluid.value),
		},
		assumed: [
			...(drawing && plant ? [...plant.assumed, ...drawing.assumed] : designs.tankAssumed),
			...zone.assumed,
			...elevation.assumed,
			...fluid.assumed,
		],
	};
}

const SEA_LEVEL = 0; // [m]
const AT_SEA_LEVEL = practice("no site was sent; used only to distinguish water from steam");

function drawingOf(request: TestRunRequest, warmUp: WarmUpRequest, run: TestRun): Completed<Drawing> {
	const sparse = sparsePlant(warmUp);
	const tank = { ...sparse.tank, startTemperature: run.tank.startTemperatures[0] };
	const { design: plant, assumed } = designPlant({ ...sparse, tank });
	const wind = sentOr<number | Column>(
		request.run.windMPerS,
		"/run/windMPerS",
		2,
		practice("a light breeze"),
	);
	return {
		value: {
			plant: { ...plant, tank: { ...plant.tank, startTemperatures: layered(plant.tank, run) } },
			build: buildOf(warmUp),
			sky: { beam: run.beam!, ambient: run.ambient!, wind: perRow(wind.value, run.time.length) },
		},
		assumed: [...wireAssumed(assumed), ...wind.assumed],
	};
}

/** First readings of the thermometers, assigned to the tank's layers [K]. */
function layered({ startTemperatures: { length } }: Tank, { thermometers }: TestRun): Float64Array {
	return Float64Array.from({ length }, (_, layer) => {
		const thermometer = Math.floor(((layer + 0.5) / length) * thermometers.length);
		return thermometers[thermometer]![0]!;
	});
}

function coreRun(request: TestRunRequest, { dish, tank }: RunDesigns): TestRun {
	const { run, site, thermometerResolutionK } = request;
	const { beamIrradianceWPerM2, ambientC, windMPerS, oilInC, oilOutC, pumpOn } = run;
	const time = runTimes(run);
	const latitude = toSi.degrees(site?.latitude ?? 0);
	return {
		time,
		thermometers: thermometersOf(run).map((column) => column.map(toSi.celsius)),
		beam: beamIrradianceWPerM2,
		ambient: ambientC === undefined ? undefined : perRow(ambientC, time.length).map(toSi.celsius),
		wind: windMPerS === undefined ? undefined : perRow(windMPerS, time.length),
		oilIn: oilInC?.map(toSi.celsius),
		oilOut: oilOutC?.map(toSi.celsius),
		pumpOn,
		tank,
		aperture: dish && apertureArea(dish, latitude, declination(time[0]!)),
		resolution: thermometerResolutionK,
	};
}

const USUAL_FLUID = "mineralOilVg32";

function fluidOf(request: TestRunRequest, warmUp: WarmUpRequest | undefined): Completed<FluidId> {
	const sent = (warmUp ?? request).loop?.fluid;
	const grounds = practice("the warm-up's default; used to convert the heat capacity rate to flow");
	const { value, assumed } = sentOr(sent, "/loop/fluid", USUAL_FLUID, grounds);
	const used = request.run.oilInC && request.run.oilOutC;
	return { value, assumed: used ? assumed : [] };
}

function perRow(value: number | Column, rows: number): number[] {
	return typeof value === "number" ? new Array<number>(rows).fill(value) : [...value];
}
