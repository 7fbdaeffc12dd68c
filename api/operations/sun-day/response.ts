import { z } from "@hono/zod-openapi";
import { Assumed } from "../../parts/assumed.ts";
import { degrees, metres, minutes, ratio, wattsPerSquareMetre } from "../../wire/units.ts";

const perDay = (description: string) => z.number().meta({ description, "x-unit": "kWh/m²" });
const localTime = (description: string) => z.string().openapi({ description, format: "date-time" });

const BestTilt = z
	.strictObject({
		from: z.string().openapi({ description: "First day.", format: "date" }),
		to: z.string().openapi({ description: "Last day.", format: "date" }),
		tiltDeg: degrees("From the horizontal. Absent when the sun stays down throughout.").optional(),
		surfaceAzimuthDeg: degrees(
			"The way it faces, clockwise from north: towards the equator. Absent when the sun stays down throughout.",
		).optional(),
		dailyTotalKwhPerM2: perDay("Beam, sky and ground on that plane, mean day of the stretch."),
	})
	.openapi("BestTilt", { description: "The fixed plane that gathers most from a clear sky." });

const SeasonTilt = z
	.strictObject({ season: z.enum(["winter", "spring", "summer", "autumn"]), ...BestTilt.shape })
	.openapi("SeasonTilt", { description: "The same for three whole months." });

const Series = z
	.strictObject({
		stepMin: minutes("Between one row and the next."),
		time: z.array(localTime("Of the row.")),
		sunAltitudeDeg: z.array(degrees("Apparent; negative below the horizon.")),
		sunAzimuthDeg: z.array(degrees("Clockwise from north.")),
		beamIrradianceWPerM2: z.array(wattsPerSquareMetre("Clear sky, on a plane that faces the sun.")),
		diffuseIrradianceWPerM2: z.array(wattsPerSquareMetre("Clear sky, on the horizontal.")),
		planeIncidenceDeg: z.array(
			degrees("Between the sun and the fixed plane's normal; over 90 it is behind."),
		),
		planeIrradianceWPerM2: z.array(wattsPerSquareMetre("Beam, sky and ground on the fixed plane.")),
	})
	.openapi("SunDaySeries", {
		description: "Through the solar day in columns, midnight to midnight by the sun, noon in the middle row.",
	});

const Daily = z
	.strictObject({
		trackedBeamKwhPerM2: perDay("Beam on an aperture that follows the sun on two axes."),
		planeBeamKwhPerM2: perDay("Beam on the fixed plane."),
		planeTotalKwhPerM2: perDay(
			"Beam, sky and ground on the fixed plane, which a flat collector uses and a dish does not.",
		),
		trackedOverPlane: ratio(
			"Tracked beam over all that falls on the fixed plane. Absent when nothing falls there.",
		).optional(),
	})
	.openapi("SunDaySums", {
		description:
			"What a square metre gets in the day. Haze and cloud cost the tracked beam more than they cost the plane.",
	});

export const SunDayResponse = z
	.strictObject({
		latitude: degrees("As asked."),
		longitude: degrees("As asked."),
		elevationM: metres("As asked or assumed."),
		date: z.string().openapi({ description: "As asked.", format: "date" }),
		timeZone: z.string().openapi({ description: "IANA time zone of every time in this answer." }),
		daylight: z.enum(["riseAndSet", "polarDay", "polarNight"]).openapi({
			description: "Whether the sun rises and sets on this day, stays up or stays down.",
		}),
		sunrise: localTime("Upper edge on a level horizon. Absent on a polar day or night.").optional(),
		noon: localTime("The sun on the meridian."),
		sunset: localTime("Upper edge on a level horizon. Absent on a polar day or night.").optional(),
		dayLengthMin: minutes("From sunrise to sunset: 1440 on a polar day, 0 in a polar night."),
		noonAltitudeDeg: degrees("Apparent altitude at noon."),
		plane: z
			.strictObject({
				tiltDeg: degrees("From the horizontal."),
				surfaceAzimuthDeg: degrees("The way it faces, clockwise from north."),
			})
			.openapi({ description: "The fixed plane that the aperture is compared with." }),
		daily: Daily,
		bestTilt: z
			.strictObject({
				day: BestTilt,
				month: BestTilt,
				seasons: z.array(SeasonTilt),
				year: BestTilt,
			})
			.openapi({
				description:
					"Best fixed tilt towards the equator under a clear sky, for this day, its month, the four seasons from December of the year before, and its year.",
			}),
		series: Series,
		assumed: z.array(Assumed),
		sources: z.array(z.string()),
	})
	.openapi("SunDay");

export type SunDayResponse = z.input<typeof SunDayResponse>;
