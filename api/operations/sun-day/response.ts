import { z } from "@hono/zod-openapi";
import { backing } from "../../parts/backing.ts";
import { degrees, metres, minutes, ratio, wattsPerSquareMetre } from "../../wire/units.ts";

const perDay = (description: string) => z.number().meta({ description, "x-unit": "kWh/m²" });
const localTime = (description: string) => z.string().openapi({ description, format: "date-time" });

const column = <T extends z.ZodType>(field: T) => z.array(field).meta({ description: field.description });

const BestTilt = z
	.strictObject({
		from: z.string().openapi({ description: "First day of the period.", format: "date" }),
		to: z.string().openapi({ description: "Last day of the period.", format: "date" }),
		tiltDeg: degrees(
			"Best tilt of the plane from the horizontal. Absent when the sun stays down throughout the period.",
		).optional(),
		surfaceAzimuthDeg: degrees(
			"Azimuth that the plane faces, clockwise from north: towards the equator. Absent when the sun stays down throughout the period.",
		).optional(),
		dailyTotalKwhPerM2: perDay("Mean daily irradiation of the plane over the period: beam, sky and ground."),
	})
	.openapi("BestTilt", { description: "Fixed plane with the greatest clear-sky irradiation over a period." });

const SeasonTilt = z
	.strictObject({
		season: z
			.enum(["winter", "spring", "summer", "autumn"])
			.meta({ description: "Season of the site's hemisphere." }),
		...BestTilt.shape,
	})
	.openapi("SeasonTilt", {
		description: "Fixed plane with the greatest clear-sky irradiation over a season of three whole months.",
	});

const Series = z
	.strictObject({
		stepMin: minutes("Time between rows."),
		time: z.array(localTime("Local time of the row.")).meta({ description: "Local time of each row." }),
		sunAltitudeDeg: column(degrees("Apparent altitude of the sun; negative below the horizon.")),
		sunAzimuthDeg: column(degrees("Azimuth of the sun, clockwise from north.")),
		beamIrradianceWPerM2: column(
			wattsPerSquareMetre("Clear-sky beam irradiance on a plane that faces the sun."),
		),
		diffuseIrradianceWPerM2: column(wattsPerSquareMetre("Clear-sky diffuse irradiance on the horizontal.")),
		planeIncidenceDeg: column(
			degrees(
				"Angle between the sun and the normal of the fixed plane. Above 90, the sun is behind the plane.",
			),
		),
		planeIrradianceWPerM2: column(
			wattsPerSquareMetre("Irradiance on the fixed plane: beam, sky and ground."),
		),
	})
	.openapi("SunDaySeries", {
		description:
			"The solar day in columns, from solar midnight to solar midnight, with solar noon in the middle row.",
	});

const Daily = z
	.strictObject({
		trackedBeamKwhPerM2: perDay("Daily beam on an aperture that tracks the sun on two axes."),
		planeBeamKwhPerM2: perDay("Daily beam on the fixed plane."),
		planeTotalKwhPerM2: perDay(
			"Daily irradiation of the fixed plane: beam, sky and ground. A flat collector uses all three, a dish only the beam.",
		),
		trackedOverPlane: ratio(
			"Tracked beam divided by the total on the fixed plane. Absent when that total is 0.",
		).optional(),
	})
	.openapi("SunDaySums", {
		description:
			"Clear-sky irradiation per square metre over the day. Haze and cloud reduce the tracked beam more than the total on the plane.",
	});

export const SunDayResponse = z
	.strictObject({
		latitude: degrees("Latitude of the request, north positive."),
		longitude: degrees("Longitude of the request, east positive."),
		elevationM: metres("Elevation above sea level, as sent or assumed."),
		date: z.string().openapi({ description: "Date of the request.", format: "date" }),
		timeZone: z.string().openapi({ description: "IANA time zone of every time in this response." }),
		daylight: z.enum(["riseAndSet", "polarDay", "polarNight"]).openapi({
			description:
				"Whether the sun rises and sets on this day, stays up (`polarDay`) or stays down (`polarNight`).",
		}),
		sunrise: localTime(
			"Sunrise: upper edge of the sun on a level horizon. Absent on a polar day or night.",
		).optional(),
		noon: localTime("Solar noon: the sun on the meridian."),
		sunset: localTime(
			"Sunset: upper edge of the sun on a level horizon. Absent on a polar day or night.",
		).optional(),
		dayLengthMin: minutes("Time from sunrise to sunset: 1440 on a polar day, 0 on a polar night."),
		noonAltitudeDeg: degrees("Apparent altitude of the sun at solar noon."),
		plane: z
			.strictObject({
				tiltDeg: degrees("Tilt of the fixed plane from the horizontal."),
				surfaceAzimuthDeg: degrees("Azimuth that the fixed plane faces, clockwise from north."),
			})
			.openapi({ description: "Fixed plane with which the tracked aperture is compared." }),
		daily: Daily,
		bestTilt: z
			.strictObject({
				day: BestTilt,
				month: BestTilt,
				seasons: z.array(SeasonTilt).meta({ description: "Best fixed tilt of each season." }),
				year: BestTilt,
			})
			.openapi({
				description:
					"Best fixed tilt towards the equator under a clear sky: for the day, its month, its year, and the four seasons from December of the year before.",
			}),
		series: Series,
		assumed: backing.assumed,
		sources: z.array(z.string()).meta({ description: "Publications behind the numbers." }),
	})
	.openapi("SunDay");

export type SunDayResponse = z.input<typeof SunDayResponse>;
