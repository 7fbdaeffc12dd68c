import {
	type MeasuredSky as CoreMeasuredSky,
	clearSkyMethods,
	type DaySky,
	derived,
	type Method,
	measuredSkyMethods,
	type Site,
	TURBIDITY_CLASSES,
	type Weather,
	weatherUnder,
} from "../../src/index.ts";
import type { Fill } from "../wire/defaults.ts";
import { toSi } from "../wire/units.ts";
import type { MeasuredSky, Sky } from "./sky.ts";

/** A sky by what its weather is made from. */
export function coreSky(sky: Sky, fill: Fill): DaySky {
	if (sky.kind === "measured") return { kind: "measured", sky: coreMeasuredSky(sky, fill) };
	return {
		kind: "clear",
		sky: {
			turbidity: turbidityOf(sky),
			ambientMinimum: toSi.celsius(sky.ambientMinC),
			ambientMaximum: toSi.celsius(sky.ambientMaxC),
			wind: sky.windMPerS,
		},
	};
}

/** Linke turbidity of a clear sky, by its number or its class. */
export function turbidityOf({ linkeTurbidity }: Exclude<Sky, MeasuredSky>): number {
	return typeof linkeTurbidity === "number" ? linkeTurbidity : TURBIDITY_CLASSES[linkeTurbidity].turbidity;
}

/** Weather at the instants of the march. */
export function weatherOf(sky: Sky, site: Site, times: Float64Array, fill: Fill): Weather {
	return weatherUnder(coreSky(sky, fill), site, times);
}

/** The models that this sky rests on. */
export function skyMethods(sky: Sky, site: Site): readonly Method[] {
	if (sky.kind === "clear") return clearSkyMethods(site.elevation);
	if (sky.beamIrradianceWPerM2) return measuredSkyMethods("measured");
	return measuredSkyMethods(sky.diffuseIrradianceWPerM2 ? "fromDiffuse" : "split");
}

/** When each measured row was read, unix time [s]. */
export function rowTimes(sky: MeasuredSky): number[] {
	return sky.time.map((text) => Date.parse(text) / 1000);
}

function coreMeasuredSky(sky: MeasuredSky, fill: Fill): CoreMeasuredSky {
	const rows = sky.time.length;
	const filled = (value: number | readonly number[]) =>
		typeof value === "number" ? new Array<number>(rows).fill(value) : value;
	const beamAlone = sky.beamIrradianceWPerM2 && !sky.diffuseIrradianceWPerM2 && !sky.globalIrradianceWPerM2;
	return {
		time: rowTimes(sky),
		beam: sky.beamIrradianceWPerM2,
		diffuse: beamAlone
			? filled(
					fill(
						"/sky/diffuseIrradianceWPerM2",
						0,
						derived("only beam was given, and a dish uses nothing else"),
					),
				)
			: sky.diffuseIrradianceWPerM2,
		global: sky.globalIrradianceWPerM2,
		ambient: filled(sky.ambientC).map(toSi.celsius),
		wind: filled(sky.windMPerS),
	};
}
