import {
	type BeamSource,
	boilingPoint,
	type Conditions,
	type DayAir,
	type Dish,
	declination,
	designDish,
	designReceiver,
	designVessel,
	designWindow,
	fluidById,
	type Heater,
	heaterOf,
	type InstantCase,
	type InstantDay,
	type InstantTask,
	type InstantWalls,
	type Method,
	type OilVessel,
	standardPressure,
	type Window,
	weatherUnder,
} from "../../../src/index.ts";
import { wireAssumed } from "../../parts/assumption.ts";
import { airAt, dayAir } from "../../parts/day-air.ts";
import { dishOf, sparseDish } from "../../parts/dish.ts";
import { corePipe } from "../../parts/pipe.ts";
import { type RangePlan, rangePlan } from "../../parts/range.ts";
import { sparseReceiver } from "../../parts/receiver.ts";
import { wireTimes } from "../../parts/run.ts";
import { coreSite, timeZoneOf } from "../../parts/site.ts";
import { coreSky, rowTimes, type Sky, skyMethods, turbidityOf } from "../../parts/sky.ts";
import type { Assumed, Completed } from "../../wire/defaults.ts";
import { instantOf } from "../../wire/time-zone.ts";
import { fromSi, optionally, toSi } from "../../wire/units.ts";
import type { InstantRequest } from "./request.ts";
import { InstantSpreads } from "./spread.ts";
import { sparseVessel } from "./vessel.ts";

/** The interval of a day in which water is wanted, with its time zone. */
interface ClockWindow extends Window {
	readonly timeZone: string;
}

/** The designs that the rules check and the plan uses. */
export interface InstantDesigns {
	readonly dish: Dish | undefined; // undefined where its size is missing or contradictory
	readonly vessel: OilVessel | undefined; // undefined for the other arrangement
	readonly window: ClockWindow | undefined; // undefined without a date
	readonly assumed: readonly Assumed[]; // for vessel and window
}

export function instantDesigns(request: InstantRequest): InstantDesigns {
	const vessel = request.vessel && designVessel(sparseVessel(request.vessel));
	const window = request.date === undefined ? undefined : windowOf(request, request.date);
	return {
		dish: dishOf(request.dish),
		vessel: vessel?.design,
		window: window?.value,
		assumed: [...(window?.assumed ?? []), ...(vessel ? wireAssumed(vessel.assumed) : [])],
	};
}

function windowOf({ site, startTime, endTime }: InstantRequest, date: string): Completed<ClockWindow> {
	const zone = timeZoneOf(site);
	const at = (clock: string) => instantOf(date, clock, zone.value);
	const { design, assumed } = designWindow(
		{ start: optionally(at, startTime), end: optionally(at, endTime) },
		coreSite(site),
		at("12:00"),
	);
	return {
		value: { ...design, timeZone: zone.value },
		assumed: [...zone.assumed, ...wireTimes(assumed, date, zone.value)],
	};
}

/** A request in the core's terms. */
export interface InstantPlan {
	readonly dish: Dish;
	readonly air: DayAir;
	readonly walls: InstantWalls;
	readonly heater: Heater;
	readonly task: InstantTask;
	readonly timeZone: string | undefined; // of the day's times
	readonly rowStep: number; // of the day's rows [s]
	readonly skyMethods: readonly Method[]; // of the day's sky
	readonly range: RangePlan<InstantSpreads> | undefined;
	readonly caseUnder: (conditions: Conditions) => InstantCase; // the same heater and task under one beam, for the range
}

/** @param sent  the raw request */
export function instantPlan(
	request: InstantRequest,
	{ vessel, window, assumed: ofDesigns }: InstantDesigns,
	sent: unknown,
): Completed<InstantPlan> {
	const site = coreSite(request.site);
	const fluid = vessel?.fluid ?? fluidById("water");
	const dish = designDish(sparseDish(request.dish));
	const receiver = designReceiver(sparseReceiver(request.receiver), dish.design, fluid, site.elevation);
	const day = window && request.sky && dayOf(request, request.sky, window);
	const sun = window ? declination((window.start + window.end) / 2) : 0; // without a date an off-axis dish on a polar axis is set as at equinox
	const task = taskOf(request, vessel, day?.value, standardPressure(site.elevation));
	const heater = heaterOf(dish.design, receiver.design, site.latitude, sun);
	return {
		value: {
			dish: dish.design,
			air: coldestAir(request, sent),
			walls: wallsOf(request),
			heater,
			task,
			timeZone: window?.timeZone,
			rowStep: toSi.minutes(request.stepMin),
			skyMethods: window && request.sky ? skyMethods(request.sky, site) : [],
			range: rangePlan(request, sent, InstantSpreads),
			caseUnder: (conditions) => ({
				...{ dish: dish.design, receiver: receiver.design, latitude: site.latitude, declination: sun },
				...{ arrangement: task.arrangement, duty: task.duty, wantedFlow: task.wantedFlow },
				...{ largestAperture: task.largestAperture, conditions, convection: 1 },
				beam: window && request.sky ? beamSource(request.sky, site.elevation) : { kind: "stated" },
			}),
		},
		assumed: [...wireAssumed([...dish.assumed, ...receiver.assumed]), ...ofDesigns, ...(day?.assumed ?? [])],
	};
}

function taskOf(
	request: InstantRequest,
	vessel: OilVessel | undefined,
	day: InstantDay | undefined,
	pressure: number,
): InstantTask {
	const { mainsTemperatureC, wantedFlowLPerMin } = request;
	return {
		duty: {
			cold: toSi.celsius(mainsTemperatureC),
			wanted: toSi.celsius(request.wantedTemperatureC),
			boiling: boilingPoint(pressure + toSi.kilopascals(request.linePressureKpa)),
		},
		wantedFlow: optionally((flow) => feedMassFlow(flow, mainsTemperatureC), wantedFlowLPerMin),
		arrangement:
			vessel && request.vessel
				? { kind: "vessel", vessel, start: toSi.celsius(request.vessel.startTemperatureC) }
				: { kind: "direct", outlet: corePipe(request.outletPipe!) }, // present for this arrangement
		levels: request.beamIrradianceWPerM2.map((beam): Conditions => ({ beam, ...airOf(request), pressure })),
		day,
		largestAperture: (Math.PI / 4) * request.largestDiameterM ** 2,
	};
}

/** Source of the beam of the day's rows. */
function beamSource(sky: Sky, elevation: number): BeamSource {
	if (sky.kind === "measured") return { kind: "measured" };
	return { kind: "clear", turbidity: turbidityOf(sky), elevation };
}

/** Mass flow [kg/s] of a flow measured at the cold feed. */
function feedMassFlow(litresPerMinute: number, mainsC: number): number {
	return toSi.litresPerMinute(litresPerMinute) * fluidById("water").density(toSi.celsius(mainsC));
}

function airOf({ levelAir }: InstantRequest): Omit<Conditions, "beam" | "pressure"> {
	return {
		ambient: toSi.celsius(levelAir.ambientC),
		wind: levelAir.windMPerS,
		altitude: toSi.degrees(levelAir.sunAltitudeDeg),
	};
}

/** Rows over daylight and window, one of them at the window's start; a measured sky limits them to its own rows. */
function dayOf(request: InstantRequest, sky: Sky, { start, end, light }: Window): Completed<InstantDay> {
	const step = toSi.minutes(request.stepMin);
	const measured = sky.kind === "measured" ? rowTimes(sky) : undefined;
	const first = Math.max(Math.min(light.start, start), measured?.[0] ?? Number.NEGATIVE_INFINITY);
	const last = Math.min(Math.max(light.end, end), measured?.at(-1) ?? Number.POSITIVE_INFINITY);
	const before = Math.floor((start - first) / step);
	const after = Math.floor((last - start) / step);
	const times = Float64Array.from({ length: before + after + 1 }, (_, i) => start + (i - before) * step);
	const grid = times.at(-1)! < end ? Float64Array.from([...times, end]) : times;
	const { value, assumed } = coreSky(sky);
	const weather = weatherUnder(value, coreSite(request.site), grid);
	return { value: { weather, from: start, to: end }, assumed };
}

/** Flow at the cold feed [L/min] of a mass flow [kg/s]. */
export type FeedFlow = (massFlow: number) => number;

/** Flow at the cold feed [L/min] of a mass flow [kg/s], as a meter there reads it. */
export function feedFlow({ task }: InstantPlan): FeedFlow {
	const density = fluidById("water").density(task.duty.cold);
	return (massFlow) => fromSi.litresPerMinute(massFlow / density);
}

function wallsOf({ outletPipe, vessel }: InstantRequest): InstantWalls {
	return { outlet: outletPipe?.material, vessel: vessel?.wallMaterial, coil: vessel?.coil.material };
}

/** Air temperature of the date's sky, else of the beam levels. */
function coldestAir({ sky, levelAir }: InstantRequest, sent: unknown): DayAir {
	return sky ? dayAir(sky, sent) : airAt(["levelAir", "ambientC"], levelAir.ambientC, sent);
}
