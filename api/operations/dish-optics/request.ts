import { z } from "@hono/zod-openapi";
import { FLUID_IDS, practice } from "../../../src/index.ts";
import { LIMITS } from "../../config/limits.ts";
import { Dish } from "../../parts/dish.ts";
import { Receiver } from "../../parts/receiver.ts";
import { air } from "../../parts/still-air.ts";
import { calendarDate } from "../../wire/calendar.ts";
import { assume, part } from "../../wire/defaults.ts";
import { celsius, degrees, metres, metresPerSecond, wattsPerSquareMetre } from "../../wire/units.ts";

const SAME = "the value that `auto` uses to size a receiver aperture";

export const DishOpticsRequest = z
	.strictObject({
		dish: Dish,
		receiver: part(Receiver),
		fluid: assume(
			z.enum(FLUID_IDS).meta({
				description:
					"Heat-transfer fluid in the receiver. It sizes the receiver dimensions that the request omits.",
			}),
			"mineralOilVg32",
			practice("stays liquid in frost and does not boil"),
		),
		latitude: degrees(
			"Latitude, north positive. Required only for an off-axis dish on a polar axis, where the hemisphere sets the seasons.",
			-90,
			90,
		).optional(),
		date: assume(
			calendarDate(
				"Day for which the figures are computed. It changes the aperture of an off-axis dish on a polar axis.",
			),
			"2025-03-20",
			practice(
				"equinox, the middle of the range of an off-axis dish on a polar axis; a two-axis dish is the same on every day",
			),
		),
		beamIrradianceWPerM2: assume(
			wattsPerSquareMetre("Beam irradiance on a plane normal to the beam.", 1, 1400),
			800,
			practice(`a clear day; ${SAME}`),
		),
		oilTemperatureC: assume(
			celsius(
				"Mean fluid temperature in the receiver, at which light caught is weighed against heat lost.",
				-20,
				300,
			),
			80,
			practice(SAME),
		),
		...air,
		windMPerS: assume(
			metresPerSecond("Wind speed at the receiver.", 0, 40),
			2,
			practice(`a light breeze; ${SAME}`),
		),
		sunAltitudeDeg: assume(
			degrees("Altitude of the sun, which is also the tilt of the receiver below the horizontal.", 0, 90),
			45,
			practice(`the middle of a working day; ${SAME}`),
		),
		curveApertureDiameterM: z
			.array(metres("Diameter of the receiver aperture at one point of the curve.", 0.005, 5))
			.min(1)
			.max(LIMITS.curvePoints.value)
			.meta({
				description:
					"Receiver apertures at which the curve is computed. When omitted: 40, evenly spaced up to 2.5 times the best aperture.",
				"x-unit": "m",
			})
			.optional(),
	})
	.openapi("DishOpticsRequest");

export type DishOpticsRequest = z.output<typeof DishOpticsRequest>;
