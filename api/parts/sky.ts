import { z } from "@hono/zod-openapi";
import {
	type ClearSky as CoreClearSky,
	type MeasuredSky as CoreMeasuredSky,
	clearSkyMethods,
	type DaySky,
	designMeasuredSky,
	handbook,
	type Method,
	measuredSkyMethods,
	practice,
	type Site,
	TURBIDITY_CLASSES,
	type TurbidityClass,
	unconfirmed,
} from "../../src/index.ts";
import { contradictory, fourDigits, type Rule } from "../validation/rule.ts";
import { instant } from "../wire/calendar.ts";
import { assume, type Completed } from "../wire/defaults.ts";
import { celsius, metresPerSecond, toSi, wattsPerSquareMetre } from "../wire/units.ts";
import { wireAssumed } from "./assumption.ts";

const MOST_ROWS = 1500; // a day by the minute, and an hour more
const CLASSES = Object.keys(TURBIDITY_CLASSES) as [TurbidityClass, ...TurbidityClass[]];
const MEANINGS = CLASSES.map(
	(name) => `${name} (${TURBIDITY_CLASSES[name].turbidity}, ${TURBIDITY_CLASSES[name].meaning})`,
).join(", ");

const WIND = practice("a light breeze");

/** Not a component of its own: an object whose `kind` may be left out cannot stand behind a discriminator. */
const ClearSky = z.strictObject({
	kind: assume(
		z.literal("clear").meta({ description: "A cloudless day, worked out from how turbid the air is." }),
		"clear",
		practice("a clear day shows what the plant can do"),
	),
	linkeTurbidity: assume(
		z.union([z.number().min(1).max(12), z.enum(CLASSES)]).meta({
			description: `How hazy the air is: Linke turbidity at air mass 2, or a named class: ${MEANINGS}.`,
			"x-unit": "1",
		}),
		3,
		unconfirmed(handbook("clear warm air", "Rigollier, Bauer & Wald, Solar Energy 68 (2000) 33–48")),
	),
	ambientMinC: assume(
		celsius("Air temperature at dawn, the day's lowest.", -60, 55),
		10,
		practice("a mild day"),
	),
	ambientMaxC: assume(
		celsius("Air temperature in mid-afternoon, the day's highest.", -60, 60),
		20,
		practice("a mild day"),
	),
	windMPerS: assume(metresPerSecond("Wind at the plant, all day.", 0, 40), 2, WIND),
});

const column = (field: z.ZodNumber) => z.array(field).min(2).max(MOST_ROWS);
const irradiance = (description: string) =>
	column(wattsPerSquareMetre(description, 0, 2000))
		.meta({ description, "x-unit": "W/m²" })
		.optional();
const oneOrColumn = (field: z.ZodNumber) =>
	z
		.union([field, column(field)])
		.meta({ ...field.meta(), description: `${field.description} One value, or one per row.` });

const MeasuredSky = z
	.strictObject({
		kind: z.literal("measured").meta({ description: "Readings of a weather station, row by row." }),
		time: z.array(instant("When the row was read.")).min(2).max(MOST_ROWS).meta({
			description:
				"When each row was read, rising; from the start of the run to its end or beyond. Between rows values lie on a straight line.",
		}),
		beamIrradianceWPerM2: irradiance("Beam on a plane normal to it, one per row."),
		diffuseIrradianceWPerM2: irradiance("Sky diffuse on the horizontal, one per row."),
		globalIrradianceWPerM2: irradiance(
			"Global on the horizontal, one per row. Without beam it is split by Erbs, Klein & Duffie (1982).",
		),
		ambientC: assume(
			oneOrColumn(celsius("Air temperature.", -60, 60)),
			15,
			practice("half way between the dawn and the afternoon of the clear day's defaults"),
		),
		windMPerS: assume(oneOrColumn(metresPerSecond("Wind at the plant.", 0, 40)), 2, WIND),
	})
	.openapi("MeasuredSky");

export const Sky = z.discriminatedUnion("kind", [ClearSky, MeasuredSky]).openapi("Sky", {
	description:
		"Sun and weather: a clear day by a few numbers, or measured columns. Without `kind` a clear day.",
	example: { kind: "clear", linkeTurbidity: 2.5, ambientMinC: -4, ambientMaxC: 9, windMPerS: 3 },
});

export type Sky = z.output<typeof Sky>;
type ClearSky = z.output<typeof ClearSky>;
type MeasuredSky = z.output<typeof MeasuredSky>;

/** A sky by what its weather is made from. */
export function coreSky(sky: Sky): Completed<DaySky> {
	switch (sky.kind) {
		case "clear":
			return { value: { kind: "clear", sky: coreClearSky(sky) }, assumed: [] };
		case "measured": {
			const { design, assumed } = designMeasuredSky(coreMeasuredSky(sky));
			return { value: { kind: "measured", sky: design }, assumed: wireAssumed(assumed) };
		}
		default:
			return sky satisfies never;
	}
}

function coreClearSky(sky: ClearSky): CoreClearSky {
	return {
		turbidity: turbidityOf(sky),
		ambientMinimum: toSi.celsius(sky.ambientMinC),
		ambientMaximum: toSi.celsius(sky.ambientMaxC),
		wind: sky.windMPerS,
	};
}

/** Linke turbidity of a clear sky, by its number or its class. */
export function turbidityOf({ linkeTurbidity }: ClearSky): number {
	return typeof linkeTurbidity === "number" ? linkeTurbidity : TURBIDITY_CLASSES[linkeTurbidity].turbidity;
}

/** The models that this sky rests on. */
export function skyMethods(sky: Sky, site: Site): readonly Method[] {
	switch (sky.kind) {
		case "clear":
			return clearSkyMethods(site.elevation);
		case "measured":
			if (sky.beamIrradianceWPerM2) return measuredSkyMethods("measured");
			return measuredSkyMethods(sky.diffuseIrradianceWPerM2 ? "fromDiffuse" : "split");
		default:
			return sky satisfies never;
	}
}

/** When each measured row was read, unix time [s]. */
export function rowTimes(sky: MeasuredSky): number[] {
	return sky.time.map((text) => Date.parse(text) / 1000);
}

function coreMeasuredSky(sky: MeasuredSky): CoreMeasuredSky {
	const column = (value: number | readonly number[]) =>
		typeof value === "number" ? new Array<number>(sky.time.length).fill(value) : value;
	return {
		time: rowTimes(sky),
		beam: sky.beamIrradianceWPerM2,
		diffuse: sky.diffuseIrradianceWPerM2,
		global: sky.globalIrradianceWPerM2,
		ambient: column(sky.ambientC).map(toSi.celsius),
		wind: column(sky.windMPerS),
	};
}

type WithSky = { readonly sky: Sky };

export const ambientInOrder: Rule<WithSky> = ({ sky }) =>
	sky.kind === "clear" && sky.ambientMinC > sky.ambientMaxC
		? [
				contradictory(
					"/sky/ambientMinC",
					`the day's lowest of ${fourDigits(sky.ambientMinC)} °C is above its highest of ${fourDigits(sky.ambientMaxC)} °C`,
				),
			]
		: [];

const COLUMNS = [
	"beamIrradianceWPerM2",
	"diffuseIrradianceWPerM2",
	"globalIrradianceWPerM2",
	"ambientC",
	"windMPerS",
] as const;

export const columnsOfOneLength: Rule<WithSky> = ({ sky }) => {
	if (sky.kind !== "measured") return [];
	return COLUMNS.flatMap((name) => {
		const column = sky[name];
		return Array.isArray(column) && column.length !== sky.time.length
			? [contradictory(`/sky/${name}`, `${name} has ${column.length} rows, time has ${sky.time.length}`)]
			: [];
	});
};

/** Beam can be had from what was measured. */
export const beamMeasured: Rule<WithSky> = ({ sky }) =>
	sky.kind === "measured" && !sky.beamIrradianceWPerM2 && !sky.globalIrradianceWPerM2
		? [
				contradictory(
					"/sky",
					"a dish lives on beam: give beamIrradianceWPerM2, or globalIrradianceWPerM2 to split it from",
				),
			]
		: [];

export const timesRise: Rule<WithSky> = ({ sky }) => {
	if (sky.kind !== "measured") return [];
	const times = rowTimes(sky);
	const back = times.findIndex((time, i) => i > 0 && time <= times[i - 1]!);
	return back < 0
		? []
		: [
				contradictory(
					`/sky/time/${back}`,
					`row ${back} is not later than the row before it; times must rise`,
				),
			];
};
