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

/** Not a component of its own: an object whose `kind` may be omitted cannot have a discriminator. */
const ClearSky = z.strictObject({
	kind: assume(
		z.literal("clear").meta({ description: "A cloudless day, computed from the turbidity of the air." }),
		"clear",
		practice("a clear day shows what the plant can do"),
	),
	linkeTurbidity: assume(
		z.union([z.number().min(1).max(12), z.enum(CLASSES)]).meta({
			description: `Haze of the air: Linke turbidity at air mass 2, or a named class: ${MEANINGS}.`,
			"x-unit": "1",
		}),
		3,
		unconfirmed(handbook("clear warm air", "Rigollier, Bauer & Wald, Solar Energy 68 (2000) 33–48")),
	),
	ambientMinC: assume(
		celsius("Lowest air temperature of the day, at dawn.", -60, 55),
		10,
		practice("a mild day"),
	),
	ambientMaxC: assume(
		celsius("Highest air temperature of the day, in mid-afternoon.", -60, 60),
		20,
		practice("a mild day"),
	),
	windMPerS: assume(metresPerSecond("Wind speed at the plant, all day.", 0, 40), 2, WIND),
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
		time: z.array(instant("Time at which the row was measured.")).min(2).max(MOST_ROWS).meta({
			description:
				"Time at which each row was measured, rising. Rows cover the run from start to end. Values between rows are interpolated linearly.",
		}),
		beamIrradianceWPerM2: irradiance("Beam irradiance on a plane normal to the beam, one value per row."),
		diffuseIrradianceWPerM2: irradiance(
			"Diffuse irradiance of the sky on the horizontal, one value per row.",
		),
		globalIrradianceWPerM2: irradiance(
			"Global irradiance on the horizontal, one value per row. Without beam, it is split by the correlation of Erbs, Klein & Duffie (1982).",
		),
		ambientC: assume(
			oneOrColumn(celsius("Air temperature.", -60, 60)),
			15,
			practice("midway between the default temperatures of a clear day"),
		),
		windMPerS: assume(oneOrColumn(metresPerSecond("Wind speed at the plant.", 0, 40)), 2, WIND),
	})
	.openapi("MeasuredSky");

export const Sky = z.discriminatedUnion("kind", [ClearSky, MeasuredSky]).openapi("Sky", {
	description:
		"Sun and weather: a clear day from a few numbers, or measured columns. If `kind` is omitted, a clear day.",
	example: { kind: "clear", linkeTurbidity: 2.5, ambientMinC: -4, ambientMaxC: 9, windMPerS: 3 },
});

export type Sky = z.output<typeof Sky>;
type ClearSky = z.output<typeof ClearSky>;
type MeasuredSky = z.output<typeof MeasuredSky>;

/** The sky for the core, from which its weather is made. */
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

/** The models that this sky uses. */
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

/** Times of the measured rows, unix time [s]. */
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
					`must be at most ambientMaxC (${fourDigits(sky.ambientMaxC)} °C); ${fourDigits(sky.ambientMinC)} °C is not`,
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
			? [
					contradictory(
						`/sky/${name}`,
						`must have as many rows as sky.time (${sky.time.length}); it has ${column.length}`,
					),
				]
			: [];
	});
};

/** Beam was measured, or follows from what was. */
export const beamMeasured: Rule<WithSky> = ({ sky }) =>
	sky.kind === "measured" && !sky.beamIrradianceWPerM2 && !sky.globalIrradianceWPerM2
		? [
				contradictory(
					"/sky",
					"sky has no beam, the only light that a dish uses; send beamIrradianceWPerM2, or globalIrradianceWPerM2 to derive it from",
				),
			]
		: [];

export const timesRise: Rule<WithSky> = ({ sky }) => {
	if (sky.kind !== "measured") return [];
	const times = rowTimes(sky);
	const back = times.findIndex((time, i) => i > 0 && time <= times[i - 1]!);
	return back < 0
		? []
		: [contradictory(`/sky/time/${back}`, `must be later than the row before it; row ${back} is not`)];
};
