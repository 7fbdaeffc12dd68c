import { z } from "@hono/zod-openapi";
import { handbook, practice, type Site, sunDayProfile, unconfirmed } from "../../../src/index.ts";
import { zoneAt } from "../../parts/site.ts";
import { calendarDate } from "../../wire/calendar.ts";
import { assume, sentOr } from "../../wire/defaults.ts";
import { fromQuery } from "../../wire/query.ts";
import { instantOf, isTimeZone } from "../../wire/time-zone.ts";
import { degrees, metres, minutes, ratio, toSi } from "../../wire/units.ts";
import { operation } from "../operation.ts";
import { bestTiltsOf, dailyOf, daylightOf, seriesOf } from "./answer.ts";
import { sunDayForms } from "./forms.ts";
import { SunDayResponse } from "./response.ts";
import { periodsOf } from "./seasons.ts";

const Query = z.strictObject({
	latitude: fromQuery(degrees("Latitude, north positive.", -90, 90)),
	longitude: fromQuery(degrees("Longitude, east positive.", -180, 180)),
	date: calendarDate("Day by the local calendar of the site."),
	elevationM: assume(
		fromQuery(
			metres("Elevation above sea level. Send it: each 1000 m adds about 7 % of beam at noon.", -430, 9000),
		),
		0,
		practice("sea level"),
	),
	timeZone: z
		.string()
		.refine(isTimeZone, "must be the IANA name of a time zone, such as Asia/Kolkata")
		.meta({
			description:
				"IANA time zone. When omitted, it is looked up from the coordinates, which can be wrong near borders.",
		})
		.optional(),
	linkeTurbidity: assume(
		fromQuery(
			ratio(
				"Linke turbidity at air mass 2: 2 for very clear cold air, 3 clear, 4 warm and moist, 5 to 6 hazy.",
				1,
				12,
			),
		),
		3,
		unconfirmed(handbook("clear warm air", "Rigollier, Bauer & Wald, Solar Energy 68 (2000) 33–48")),
	),
	albedo: assume(
		fromQuery(ratio("Share of light that the ground reflects.", 0, 1)),
		0.2,
		practice("dry ground and grass"),
	),
	tiltDeg: fromQuery(
		degrees("Tilt of the fixed plane from the horizontal. When omitted: the latitude.", 0, 90),
	).optional(),
	surfaceAzimuthDeg: fromQuery(
		degrees(
			"Azimuth that the fixed plane faces, clockwise from north. When omitted: towards the equator.",
			0,
			360,
		),
	).optional(),
	stepMin: assume(
		fromQuery(minutes("Time between rows of the series.", 5, 60)),
		30,
		practice("48 steps to the day"),
	),
});

export const sunDay = operation({
	method: "get",
	path: "/v1/sun/day",
	operationId: "getSunDay",
	tag: "Sun",
	summary: "Sun on one clear day",
	description: [
		"Computes sunrise, solar noon, sunset and day length. The series holds the sun's direction, clear-sky beam and diffuse irradiance, and irradiance on a fixed plane.",
		"The response compares the day's beam on a tracked aperture with that plane, and includes the best fixed tilt for day, month, seasons and year.",
		"A polar day or night returns 200 with its `daylight` outcome, not an error.",
	].join("\n"),
	input: Query,
	output: SunDayResponse,
	examples: {
		winter: {
			summary: "Winter day in Delhi, hour by hour",
			value: {
				latitude: 28.6,
				longitude: 77.2,
				elevationM: 216,
				date: "2025-01-15",
				tiltDeg: 45,
				stepMin: 60,
			},
		},
		polarNight: {
			summary: "Tromsø in December",
			value: { latitude: 69.65, longitude: 18.96, elevationM: 10, date: "2025-12-21", stepMin: 60 },
		},
	},
	maxAge: 86_400,
	cost: 10,
	forms: sunDayForms,
	plan: planOf,
	outcome: ({ site, profile }) => sunDayProfile(site, profile),
	answer: ({ timeZone, plane, periods }, profile, query) => {
		const { latitude, longitude, elevationM, date, stepMin } = query;
		return {
			...{ latitude, longitude, elevationM, date, timeZone },
			...daylightOf(profile, timeZone),
			plane,
			daily: dailyOf(profile),
			bestTilt: bestTiltsOf(profile, date, periods),
			series: seriesOf(profile, timeZone, stepMin),
			sources: SOURCES,
		};
	},
});

type Query = z.output<typeof Query>;

function planOf(query: Query) {
	const { latitude, longitude, date } = query;
	const zone = zoneAt(query.timeZone, "/timeZone", latitude, longitude);
	const tilt = sentOr(query.tiltDeg, "/tiltDeg", Math.abs(latitude), practice("the latitude"));
	const azimuth = sentOr(
		query.surfaceAzimuthDeg,
		"/surfaceAzimuthDeg",
		latitude >= 0 ? 180 : 0,
		practice("towards the equator"),
	);
	const periods = periodsOf(date, latitude, zone.value);
	const value = {
		timeZone: zone.value,
		plane: { tiltDeg: tilt.value, surfaceAzimuthDeg: azimuth.value },
		periods,
		site: siteOf(query),
		profile: {
			time: instantOf(date, "12:00", zone.value),
			turbidity: query.linkeTurbidity,
			plane: { tilt: toSi.degrees(tilt.value), azimuth: toSi.degrees(azimuth.value) },
			step: toSi.minutes(query.stepMin),
			periods: periods.map(({ start, end }) => ({ from: start, to: end })),
		},
	};
	return { value, assumed: [...zone.assumed, ...tilt.assumed, ...azimuth.assumed] };
}

function siteOf({ latitude, longitude, elevationM, albedo }: Query): Site {
	return {
		latitude: toSi.degrees(latitude),
		longitude: toSi.degrees(longitude),
		elevation: elevationM,
		albedo,
	};
}

const SOURCES = [
	"Position: Meeus, Astronomical Algorithms, 2nd ed. 1998, ch. 16 and 25",
	"Clear sky: Ineichen & Perez, Solar Energy 73 (2002) 151–157",
	"Tilted plane: Hay & Davies, Proc. First Canadian Solar Radiation Data Workshop (1980) 59–72",
	"Air: ISO 2533:1975; air mass: Kasten & Young, Applied Optics 28 (1989) 4735–4738",
];
