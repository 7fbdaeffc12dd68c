import { z } from "@hono/zod-openapi";
import { FLUID_IDS, practice } from "../../../src/index.ts";
import { Dish } from "../../parts/dish.ts";
import { Receiver } from "../../parts/receiver.ts";
import { air } from "../../parts/still-air.ts";
import { calendarDate } from "../../wire/calendar.ts";
import { assume, part } from "../../wire/defaults.ts";
import {
	celsius,
	degrees,
	litresPerMinute,
	metresPerSecond,
	watts,
	wattsPerSquareMetre,
} from "../../wire/units.ts";

const MAX_LIST_LENGTH = 100;

const list = (field: z.ZodNumber, description: string) =>
	z.array(field).min(1).max(MAX_LIST_LENGTH).meta({ description });

const Stagnation = z
	.strictObject({
		beamIrradianceWPerM2: assume(
			wattsPerSquareMetre("Beam irradiance on a plane normal to the beam.", 1, 1400),
			1000,
			practice("a very clear noon"),
		),
		ambientC: assume(celsius("Air temperature at stagnation.", -60, 60), 25, practice("a warm day")),
		windMPerS: assume(
			metresPerSecond("Wind speed at the receiver at stagnation.", 0, 40),
			0,
			practice("still air, the worst case"),
		),
		tiltDeg: assume(
			degrees("Tilt of the receiver below the horizontal at stagnation.", 0, 90),
			90,
			practice("sun overhead, the worst case: a cavity that faces straight down keeps its hot air"),
		),
	})
	.openapi("StagnationConditions", {
		description: "Sun, air and wind at the receiver when the pump has stopped.",
	});

export const ReceiverLossesRequest = z
	.strictObject({
		receiver: part(Receiver),
		dish: Dish.optional(),
		absorbedPowerW: watts(
			"Light absorbed by the absorber at `beamIrradianceWPerM2`. Send it instead of `dish`.",
			1,
			500_000,
		).optional(),
		rimAngleDeg: degrees(
			"Half-angle of the cone of light that delivers `absorbedPowerW`. A coil reflects more of slanted light, a flat coil most. When omitted: 45°. Omit it with `dish`, which has its own rim angle. An efficiency line ignores it.",
			10,
			120,
		).optional(),
		beamIrradianceWPerM2: assume(
			wattsPerSquareMetre("Beam irradiance on a plane normal to the beam.", 1, 1400),
			800,
			practice("a clear day"),
		),
		latitude: degrees(
			"Latitude, north positive. Required only for an off-axis dish on a polar axis, where the hemisphere sets the seasons.",
			-90,
			90,
		).optional(),
		date: assume(
			calendarDate("Day for which the aperture of an off-axis dish on a polar axis is computed."),
			"2025-03-20",
			practice(
				"equinox, the middle of the range of an off-axis dish on a polar axis; a two-axis dish is the same on every day",
			),
		),
		fluid: assume(
			z.enum(FLUID_IDS).meta({ description: "Heat-transfer fluid in the receiver." }),
			"mineralOilVg32",
			practice("stays liquid in frost and does not boil"),
		),
		flowLPerMin: assume(
			litresPerMinute("Flow through the receiver's tube.", 0.05, 100),
			4,
			practice("keeps the temperature rise of oil in the receiver of a small dish below 20 K"),
		),
		oilTemperatureC: assume(
			list(
				celsius("Temperature of the fluid in the receiver.", -20, 300),
				"Fluid temperatures to compute: the mean of inlet and outlet. For an efficiency line: the outlet temperature.",
			),
			[40, 60, 80, 100, 120, 150],
			practice("from a cold tank to a hot loop"),
		),
		windMPerS: assume(
			list(metresPerSecond("Wind speed at the receiver.", 0, 40), "Wind speeds at the receiver to compute."),
			[2],
			practice("a light breeze"),
		),
		tiltDeg: assume(
			list(
				degrees("Tilt of the receiver below the horizontal.", 0, 90),
				"Tilts of the receiver below the horizontal to compute: 0 faces sideways, 90 straight down. For a dish that faces the sun, the tilt is the sun's altitude.",
			),
			[45],
			practice("the middle of a working day"),
		),
		...air,
		stagnation: part(Stagnation),
	})
	.openapi("ReceiverLossesRequest", {
		description: "A receiver and the light on it. Send either `dish` or `absorbedPowerW`.",
	});

export type ReceiverLossesRequest = z.output<typeof ReceiverLossesRequest>;
