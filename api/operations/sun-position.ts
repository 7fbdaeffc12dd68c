import { z } from "@hono/zod-openapi";
import {
	absoluteAirMass,
	apparentAltitudeAt,
	extraterrestrialNormal,
	sunPosition as positionOfSun,
	practice,
	relativeAirMass,
	standardPressure,
} from "../../src/index.ts";
import { LIMITS } from "../config/limits.ts";
import { backing } from "../parts/backing.ts";
import { instant } from "../wire/calendar.ts";
import { assume } from "../wire/defaults.ts";
import { fromQuery, instantFromQuery, oneOrMany } from "../wire/query.ts";
import { degrees, fromSi, metres, ratio, toSi, wattsPerSquareMetre } from "../wire/units.ts";
import { operation } from "./operation.ts";

const Query = z.strictObject({
	latitude: fromQuery(degrees("Latitude, north positive.", -90, 90)),
	longitude: fromQuery(degrees("Longitude, east positive.", -180, 180)),
	time: oneOrMany(
		instantFromQuery(instant("Instant to compute. Repeat the parameter for several instants.")),
		LIMITS.instantsPerRequest.value,
	),
	elevationM: assume(
		fromQuery(metres("Elevation above sea level. Thinner air refracts and dims the light less.", -430, 9000)),
		0,
		practice("sea level"),
	),
});

const Position = z
	.strictObject({
		time: z.string().openapi({ description: "Instant of the request.", format: "date-time" }),
		apparentAltitudeDeg: degrees(
			"Apparent altitude of the sun's centre, with refraction at the site's standard pressure. Below the horizon, the refraction at the horizon is used.",
		),
		trueAltitudeDeg: degrees("Altitude of the sun's centre without refraction."),
		azimuthDeg: degrees("Azimuth of the sun, clockwise from north: east 90, south 180."),
		airMass: ratio(
			"Relative air mass: air along the path of the light, relative to air overhead (Kasten & Young). Absent while the sun is down.",
		).optional(),
		absoluteAirMass: ratio(
			"Absolute air mass: air along the path of the light, relative to air overhead at sea level. Absent while the sun is down.",
		).optional(),
		extraterrestrialNormalWPerM2: wattsPerSquareMetre(
			"Irradiance outside the atmosphere on a plane that faces the sun.",
		),
	})
	.openapi("SunPosition");

const Response = z
	.strictObject({
		latitude: degrees("Latitude of the request, north positive."),
		longitude: degrees("Longitude of the request, east positive."),
		elevationM: metres("Elevation above sea level, as sent or assumed."),
		positions: z
			.array(Position)
			.openapi({ description: "Position of the sun at each instant, in the order of the request." }),
		assumed: backing.assumed,
		sources: z.array(z.string()).meta({ description: "Publications behind the numbers." }),
	})
	.openapi("SunPositions");

export const sunPosition = operation({
	method: "get",
	path: "/v1/sun/position",
	operationId: "getSunPosition",
	tag: "Sun",
	summary: "Position of the sun",
	description: [
		"Computes apparent and true altitude, azimuth, air mass and the irradiance outside the atmosphere, at one instant or several.",
		"Altitude and azimuth are accurate within 0.02° from 1990 to 2050.",
	].join("\n"),
	input: Query,
	output: Response,
	examples: {
		one: {
			summary: "Delhi, early afternoon in January",
			value: { latitude: 28.6, longitude: 77.2, elevationM: 216, time: ["2025-01-15T08:30:00Z"] },
		},
		many: {
			summary: "Noon and night by local time",
			value: {
				latitude: 39.742476,
				longitude: -105.1786,
				elevationM: 1830,
				time: ["2003-10-17T12:30:30-07:00", "2003-10-17T22:00:00-07:00"],
			},
		},
	},
	maxAge: 86_400,
	cost: 1,
	plan: (query) => ({ value: query, assumed: [] }),
	outcome: ({ time, latitude, longitude, elevationM }) =>
		time.map((one) => positionAt(one, latitude, longitude, elevationM)),
	answer: ({ latitude, longitude, elevationM }, positions) => ({
		latitude,
		longitude,
		elevationM,
		positions,
		sources: [
			"Position: Meeus, Astronomical Algorithms, 2nd ed. 1998, ch. 16 and 25",
			"Air mass: Kasten & Young, Applied Optics 28 (1989) 4735–4738",
			"Extraterrestrial irradiance: 1361.1 W/m² (Gueymard 2018) × the distance factor of Spencer, Search 2 (1971) 172",
		],
	}),
});

function positionAt(time: string, latitudeDeg: number, longitudeDeg: number, elevation: number) {
	const seconds = Date.parse(time) / 1000;
	const pressure = standardPressure(elevation);
	const sun = positionOfSun(seconds, toSi.degrees(latitudeDeg), toSi.degrees(longitudeDeg));
	const apparent = apparentAltitudeAt(sun.trueAltitude, pressure);
	return {
		time,
		apparentAltitudeDeg: fromSi.degrees(apparent),
		trueAltitudeDeg: fromSi.degrees(sun.trueAltitude),
		azimuthDeg: fromSi.degrees(sun.azimuth),
		...(apparent >= 0 && {
			airMass: relativeAirMass(apparent),
			absoluteAirMass: absoluteAirMass(apparent, pressure),
		}),
		extraterrestrialNormalWPerM2: extraterrestrialNormal(seconds),
	};
}
