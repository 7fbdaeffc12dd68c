import {
	type BeamSource,
	boilingPoint,
	type Conditions,
	clearSkyMethods,
	type Dish,
	declination,
	fluidById,
	type Heater,
	heaterOf,
	type InstantCase,
	type InstantDay,
	type InstantTask,
	type Method,
	measuredSkyMethods,
	type OilVessel,
	type SunDay,
	standard,
	standardPressure,
	sunDay,
	unconfirmed,
} from "../../../src/index.ts";
import { coreDish } from "../../parts/dish.ts";
import { corePipe } from "../../parts/pipe.ts";
import { coreReceiver } from "../../parts/receiver-design.ts";
import { coreSite, type Site, zoneOf } from "../../parts/site.ts";
import type { Sky } from "../../parts/sky.ts";
import { rowTimes, turbidityOf, weatherOf } from "../../parts/weather.ts";
import type { Fill } from "../../wire/defaults.ts";
import { instantOf, isoText } from "../../wire/time-zone.ts";
import { fromSi, toSi } from "../../wire/units.ts";
import type { InstantRequest } from "./request.ts";
import { coreVessel } from "./vessel.ts";

/** A request as the core wants it. */
export interface InstantPlan {
	readonly dish: Dish;
	readonly heater: Heater;
	readonly task: InstantTask;
	readonly zone: string | undefined; // of the day's times
	readonly skyMethods: readonly Method[]; // what the day's sun rests on
	readonly caseUnder: (conditions: Conditions) => InstantCase; // the same heater and task under one sun, to vary
}

export function instantPlan(request: InstantRequest, fill: Fill): InstantPlan {
	const site = coreSite(request.site);
	const dish = coreDish(request.dish, fill);
	const vessel = request.vessel && coreVessel(request.vessel, fill);
	const fluid = vessel?.fluid ?? fluidById("water");
	const receiver = coreReceiver(request.receiver, dish, fluid, site.elevation, fill);
	const span = request.date === undefined ? undefined : spanOf(request, request.date, fill);
	const tilt = span ? declination((span.from + span.to) / 2) : 0; // without a date an off-axis dish on a polar axis stands as at equinox
	const pressure = standardPressure(site.elevation);
	const task = taskOf(request, span, vessel, pressure, fill);
	const beam = span ? beamSource(request.sky!, site.elevation) : ({ kind: "stated" } as const);
	return {
		dish,
		heater: heaterOf(dish, receiver, site.latitude, tilt),
		zone: span?.zone,
		skyMethods: span && request.sky ? skyMethods(request.sky, site.elevation) : [],
		task,
		caseUnder: (conditions) => ({
			...{ dish, receiver, latitude: site.latitude, declination: tilt, convection: 1 },
			...{ arrangement: task.arrangement, duty: task.duty, wantedFlow: task.wantedFlow },
			...{ largestAperture: task.largestAperture, conditions, beam },
		}),
	};
}

function taskOf(
	request: InstantRequest,
	span: Span | undefined,
	vessel: OilVessel | undefined,
	pressure: number,
	fill: Fill,
): InstantTask {
	return {
		duty: {
			cold: toSi.celsius(request.mainsTemperatureC),
			wanted: toSi.celsius(request.wantedTemperatureC),
			boiling: boilingPoint(pressure + toSi.kilopascals(request.linePressureKpa)),
		},
		wantedFlow:
			request.wantedFlowLPerMin === undefined
				? undefined
				: feedMassFlow(request.wantedFlowLPerMin, request.mainsTemperatureC),
		arrangement:
			vessel && request.vessel
				? { kind: "vessel", vessel, start: toSi.celsius(request.vessel.startTemperatureC) }
				: { kind: "direct", outlet: corePipe(request.outletPipe!) }, // that arrangement brings one
		levels: request.beamIrradianceWPerM2.map((beam): Conditions => ({ beam, ...airOf(request), pressure })),
		day: span && dayOf(request, span, fill),
		largestAperture: (Math.PI / 4) * request.largestDiameterM ** 2,
	};
}

/** What the beam of the day's rows rests on. */
function beamSource(sky: Sky, elevation: number): BeamSource {
	if (sky.kind === "measured") return { kind: "measured" };
	return { kind: "clear", turbidity: turbidityOf(sky), elevation };
}

function skyMethods(sky: Sky, elevation: number): readonly Method[] {
	if (sky.kind === "clear") return clearSkyMethods(elevation);
	if (sky.beamIrradianceWPerM2) return measuredSkyMethods("measured");
	return measuredSkyMethods(sky.diffuseIrradianceWPerM2 ? "fromDiffuse" : "split");
}

/** A flow counted at the cold feed [kg/s]. */
export function feedMassFlow(litresPerMinute: number, mainsC: number): number {
	return toSi.litresPerMinute(litresPerMinute) * fluidById("water").density(toSi.celsius(mainsC));
}

function airOf({ levelAir }: InstantRequest): Omit<Conditions, "beam" | "pressure"> {
	return {
		ambient: toSi.celsius(levelAir.ambientC),
		wind: levelAir.windMPerS,
		altitude: toSi.degrees(levelAir.sunAltitudeDeg),
	};
}

/** The window in which water is wanted, and the day's light around it, unix times [s]. */
interface Span {
	readonly zone: string;
	readonly from: number;
	readonly to: number;
	readonly light: { readonly from: number; readonly to: number };
}

const MINUTE = 60; // [s]
const HALF_WINDOW = 7200; // [s] 10 to 14 h by the sun: the hours in which ASAE S580.1 tests (from memory)
const WINDOW = unconfirmed(
	standard("two hours either side of solar noon, the hours in which solar cookers are tested", "ASAE S580.1"),
);

export interface WindowAsked {
	readonly site: Site;
	readonly startTime?: string | undefined;
	readonly endTime?: string | undefined;
}

export function spanOf(asked: WindowAsked, date: string, fill: Fill): Span {
	const zone = zoneOf(asked.site, fill);
	const noonClock = instantOf(date, "12:00", zone);
	const sun = sunDay(noonClock, toSi.degrees(asked.site.latitude), toSi.degrees(asked.site.longitude));
	const end = (name: string, given: string | undefined, time: number): number => {
		if (given !== undefined) return instantOf(date, given, zone);
		const minute = Math.round(time / MINUTE) * MINUTE;
		fill(`/${name}`, isoText(minute, zone).slice(11, 16), WINDOW);
		return minute;
	};
	return {
		zone,
		from: end("startTime", asked.startTime, sun.noon - HALF_WINDOW),
		to: end("endTime", asked.endTime, sun.noon + HALF_WINDOW),
		light: lightOf(sun),
	};
}

function lightOf(sun: SunDay): Span["light"] {
	if (sun.kind === "riseAndSet") return { from: sun.sunrise, to: sun.sunset };
	const half = sun.kind === "alwaysUp" ? 43_200 : HALF_WINDOW; // [s]
	return { from: sun.noon - half, to: sun.noon + half };
}

/** Rows through the light and the window, one of them at the window's start; of a measured sky no farther than its rows. */
function dayOf(request: InstantRequest, { from, to, light }: Span, fill: Fill): InstantDay {
	const sky = request.sky!; // a date brings one
	const step = toSi.minutes(request.stepMin);
	const measured = sky.kind === "measured" ? rowTimes(sky) : undefined;
	const first = Math.max(Math.min(light.from, from), measured?.[0] ?? Number.NEGATIVE_INFINITY);
	const last = Math.min(Math.max(light.to, to), measured?.at(-1) ?? Number.POSITIVE_INFINITY);
	const before = Math.floor((from - first) / step);
	const after = Math.floor((last - from) / step);
	const times = Float64Array.from({ length: before + after + 1 }, (_, i) => from + (i - before) * step);
	const grid = times.at(-1)! < to ? Float64Array.from([...times, to]) : times;
	return { weather: weatherOf(sky, coreSite(request.site), grid, fill), from, to };
}

/** Litres a minute at the cold feed of a mass flow [kg/s]. */
export type FeedFlow = (massFlow: number) => number;

/** Litres a minute at the cold feed of a mass flow [kg/s]: what a meter there reads. */
export function feedFlow({ task }: InstantPlan): FeedFlow {
	const density = fluidById("water").density(task.duty.cold);
	return (massFlow) => fromSi.litresPerMinute(massFlow / density);
}
