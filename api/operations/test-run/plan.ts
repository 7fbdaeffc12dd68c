import {
	apertureArea,
	type Tank as CoreTank,
	type Drawing,
	declination,
	type Fluid,
	fluidById,
	practice,
	type TestRun,
} from "../../../src/index.ts";
import { buildOf } from "../../parts/build.ts";
import { plantOf } from "../../parts/day-plan.ts";
import { WarmUpRequest } from "../../parts/day-request.ts";
import { coreDish } from "../../parts/dish.ts";
import { zoneOf } from "../../parts/site.ts";
import { coreTank } from "../../parts/tank.ts";
import { type Assumed, defaultsTaken, type Fill } from "../../wire/defaults.ts";
import { dateOf } from "../../wire/time-zone.ts";
import { toSi } from "../../wire/units.ts";
import type { TestRunRequest } from "./request.ts";

/** A measured run as the core wants it, with its plant where enough is known of it to predict the run. */
export interface TestRunPlan {
	readonly run: TestRun;
	readonly drawing: Drawing | undefined;
	readonly elevation: number; // [m]
	readonly zone: string;
	readonly fluid: Fluid; // in the loop
}

type Column = readonly number[];

/** The columns of the tank's thermometers, top first. */
export function thermometersOf({ tankTemperatureC }: TestRunRequest["run"]): readonly Column[] {
	return typeof tankTemperatureC[0] === "number"
		? [tankTemperatureC as Column]
		: (tankTemperatureC as Column[]);
}

/** When each row was read, unix time [s]. */
export function runTimes({ time }: TestRunRequest["run"]): number[] {
	return time.map((text) => Date.parse(text) / 1000);
}

/** Whether enough is known of the plant and its sky to predict the run. */
export function isComparable({ site, dish, run }: TestRunRequest): boolean {
	return Boolean(site && dish && run.beamIrradianceWPerM2 && run.ambientC !== undefined);
}

/** The plant of a run as a warm-up asks for it, on the run's day; what was not said takes the warm-up's defaults.
 *  @param given  the request as it came */
export function asWarmUp(request: TestRunRequest, given: unknown): { given: unknown; value: WarmUpRequest } {
	const { site, dish, tank, receiver, loop, coil } = given as Record<string, unknown>;
	const zone = zoneOf(request.site!, (_, value) => value);
	const date = dateOf(runTimes(request.run)[0]!, zone);
	const said = { site, date, dish, tank, receiver, loop, coil };
	return { given: said, value: WarmUpRequest.parse(said) };
}

const SEA_LEVEL = practice("no site was given; it serves only to tell water from steam");

/** @param note  takes the defaults of the plant's parts, in the answer's words */
export function testRunPlan(
	request: TestRunRequest,
	given: unknown,
	fill: Fill,
	note: (assumed: readonly Assumed[]) => void,
): TestRunPlan {
	const comparable = isComparable(request);
	const warmUp = comparable ? asWarmUp(request, given) : undefined;
	const run = coreRun(request, comparable ? (_, value) => value : fill);
	if (warmUp) note(defaultsTaken(WarmUpRequest, warmUp.given, warmUp.value).filter(ofUnsaidPart(request)));
	const zone = request.site ? zoneOf(request.site, fill) : "UTC";
	return {
		run,
		drawing: warmUp && drawingOf(request, warmUp.value, run, fill),
		elevation: request.site?.elevationM ?? fill("/site/elevationM", 0, SEA_LEVEL),
		zone,
		fluid: fluidOf(request, warmUp?.value, fill),
	};
}

const PARTS = ["receiver", "loop", "coil"] as const;

/** Of the parts that the request leaves out whole; what it leaves out of the others it tells itself. */
const ofUnsaidPart =
	(request: TestRunRequest) =>
	({ pointer }: Assumed): boolean =>
		PARTS.some((name) => request[name] === undefined && pointer.startsWith(`/${name}/`));

const STILL_OPEN = ["/tank/startTemperatureC", "/draw/mainsTemperatureC"]; // that the run's first row says

function drawingOf(request: TestRunRequest, warmUp: WarmUpRequest, run: TestRun, fill: Fill): Drawing {
	const plant = plantOf(warmUp, (pointer, value, why) =>
		STILL_OPEN.includes(pointer) ? value : fill(pointer, value, why),
	);
	const layers = plant.tank.startTemperatures.length;
	const startTemperatures = Float64Array.from({ length: layers }, (_, layer) => {
		const thermometer = Math.floor(((layer + 0.5) / layers) * run.thermometers.length);
		return run.thermometers[thermometer]![0]!;
	});
	const wind = request.run.windMPerS ?? fill("/run/windMPerS", 2, practice("a light breeze"));
	return {
		plant: { ...plant, tank: { ...plant.tank, startTemperatures } },
		build: buildOf(warmUp),
		sky: { beam: run.beam!, ambient: run.ambient!, wind: perRow(wind, run.time.length) },
	};
}

function coreRun(request: TestRunRequest, fill: Fill): TestRun {
	const { run, tank, thermometerResolutionK } = request;
	const { beamIrradianceWPerM2, ambientC, windMPerS, oilInC, oilOutC, pumpOn } = run;
	const thermometers = thermometersOf(run).map((column) => column.map(toSi.celsius));
	const time = runTimes(run);
	return {
		time,
		thermometers,
		beam: beamIrradianceWPerM2,
		ambient: ambientC === undefined ? undefined : perRow(ambientC, time.length).map(toSi.celsius),
		wind: windMPerS === undefined ? undefined : perRow(windMPerS, time.length),
		oilIn: oilInC?.map(toSi.celsius),
		oilOut: oilOutC?.map(toSi.celsius),
		pumpOn,
		tank: filledTank(tank, thermometers, fill),
		aperture: apertureOf(request, time[0]!, fill),
		resolution: thermometerResolutionK,
	};
}

/** The tank as the run finds it: one mixed layer at the first row's mean. */
function filledTank(tank: TestRunRequest["tank"], thermometers: readonly Column[], fill: Fill): CoreTank {
	const empty = coreTank({ ...tank, nodes: 1, startTemperatureC: 0 }, 0, fill);
	const start = thermometers.reduce((sum, column) => sum + column[0]!, 0) / thermometers.length;
	return { ...empty, startTemperatures: Float64Array.of(start) };
}

/** Area that takes the beam, for which a dish's focus does not matter. */
function apertureOf({ dish, site }: TestRunRequest, time: number, fill: Fill): number | undefined {
	if (!dish) return undefined;
	const unfilled: Fill = (_, value) => value;
	const latitude = toSi.degrees(site?.latitude ?? 0);
	return apertureArea(coreDish(dish, site ? fill : unfilled), latitude, declination(time));
}

function fluidOf(request: TestRunRequest, warmUp: WarmUpRequest | undefined, fill: Fill): Fluid {
	if (warmUp) return fluidById(warmUp.loop.fluid);
	if (request.loop) return fluidById(request.loop.fluid);
	return fluidById(
		request.run.oilInC && request.run.oilOutC
			? fill(
					"/loop/fluid",
					"mineralOilVg32",
					practice("the warm-up's default; it serves to turn heat into flow"),
				)
			: "mineralOilVg32",
	);
}

function perRow(value: number | Column, rows: number): number[] {
	return typeof value === "number" ? new Array<number>(rows).fill(value) : [...value];
}
