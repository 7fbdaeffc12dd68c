import { z } from "@hono/zod-openapi";
import { FLUID_IDS, practice } from "../../../src/index.ts";
import { LIMITS } from "../../config/limits.ts";
import { Dish } from "../../parts/dish.ts";
import { Receiver } from "../../parts/receiver.ts";
import { air } from "../../parts/still-air.ts";
import { calendarDate } from "../../wire/calendar.ts";
import { assume, part } from "../../wire/defaults.ts";
import { celsius, degrees, metres, metresPerSecond, wattsPerSquareMetre } from "../../wire/units.ts";

const SAME = "where `auto` chooses a receiver's aperture";

export const DishOpticsRequest = z
	.strictObject({
		dish: Dish,
		receiver: part(Receiver),
		fluid: assume(
			z
				.enum(FLUID_IDS)
				.meta({ description: "What carries the heat; it sizes what the receiver leaves open." }),
			"mineralOilVg32",
			practice("stays liquid in frost and does not boil"),
		),
		latitude: degrees(
			"North of the equator; south is negative. Only an off-axis dish on a polar axis needs it: its hemisphere turns the seasons.",
			-90,
			90,
		).optional(),
		date: assume(
			calendarDate(
				"Day of the year that the figures are for: it moves the aperture of an off-axis dish on a polar axis.",
			),
			"2025-03-20",
			practice(
				"equinox, the middle of the year of an off-axis dish on a polar axis; a two-axis dish is the same on every day",
			),
		),
		beamIrradianceWPerM2: assume(
			wattsPerSquareMetre("Beam on a plane normal to it.", 1, 1400),
			800,
			practice(`a clear day; ${SAME}`),
		),
		oilTemperatureC: assume(
			celsius("Mean of the fluid in the receiver, that light caught and heat lost are weighed at.", -20, 300),
			80,
			practice(SAME),
		),
		...air,
		windMPerS: assume(
			metresPerSecond("Wind at the receiver.", 0, 40),
			2,
			practice(`a light breeze; ${SAME}`),
		),
		sunAltitudeDeg: assume(
			degrees("How high the sun stands: how far the receiver looks down.", 0, 90),
			45,
			practice(`the middle of a working day; ${SAME}`),
		),
		curveApertureDiameterM: z
			.array(metres("Diameter of the receiver's aperture.", 0.005, 5))
			.min(1)
			.max(LIMITS.curvePoints.value)
			.meta({
				description:
					"Apertures that the curve is drawn at. Left out: forty, evenly up to two and a half times the best.",
				"x-unit": "m",
			})
			.optional(),
	})
	.openapi("DishOpticsRequest");

export type DishOpticsRequest = z.output<typeof DishOpticsRequest>;
