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

const MOST_OF_ONE = 100;

const list = (field: z.ZodNumber, description: string) =>
	z.array(field).min(1).max(MOST_OF_ONE).meta({ description });

const Stagnation = z
	.strictObject({
		beamIrradianceWPerM2: assume(
			wattsPerSquareMetre("Beam on a plane normal to it.", 1, 1400),
			1000,
			practice("a very clear noon"),
		),
		ambientC: assume(celsius("Air temperature.", -60, 60), 25, practice("a warm day")),
		windMPerS: assume(
			metresPerSecond("Wind at the receiver.", 0, 40),
			0,
			practice("still air, the worst case"),
		),
		tiltDeg: assume(
			degrees("How far the receiver looks down.", 0, 90),
			90,
			practice("sun overhead, the worst case: a hollow that looks straight down keeps its hot air"),
		),
	})
	.openapi("StagnationConditions", {
		description: "The sun that the receiver stands in when the pump has stopped.",
	});

export const ReceiverLossesRequest = z
	.strictObject({
		receiver: part(Receiver),
		dish: Dish.optional(),
		absorbedPowerW: watts(
			"Light that the absorber takes up at `beamIrradianceWPerM2`. Stands in for the dish.",
			1,
			500_000,
		).optional(),
		rimAngleDeg: degrees(
			"Half-angle of the cone in which `absorbedPowerW` came; a coil throws more of slanted light back, a flat one most. Left out, it is 45°. A given dish has its own; an efficiency line does not heed it.",
			10,
			120,
		).optional(),
		beamIrradianceWPerM2: assume(
			wattsPerSquareMetre("Beam on a plane normal to it.", 1, 1400),
			800,
			practice("a clear day"),
		),
		latitude: degrees(
			"North of the equator; south is negative. Only an off-axis dish on a polar axis needs it: its hemisphere turns the seasons.",
			-90,
			90,
		).optional(),
		date: assume(
			calendarDate("Day that the aperture of an off-axis dish on a polar axis is taken at."),
			"2025-03-20",
			practice(
				"equinox, the middle of the year of an off-axis dish on a polar axis; a two-axis dish is the same on every day",
			),
		),
		fluid: assume(
			z.enum(FLUID_IDS).meta({ description: "What carries the heat." }),
			"mineralOilVg32",
			practice("stays liquid in frost and does not boil"),
		),
		flowLPerMin: assume(
			litresPerMinute("Through the receiver's tube.", 0.05, 100),
			4,
			practice("keeps oil under 20 K of rise at the receiver of a small dish"),
		),
		oilTemperatureC: assume(
			list(
				celsius("Of the fluid.", -20, 300),
				"Of the fluid, the mean of what enters and leaves; of an efficiency line what leaves.",
			),
			[40, 60, 80, 100, 120, 150],
			practice("from a cold tank to a hot loop"),
		),
		windMPerS: assume(
			list(metresPerSecond("Wind at the receiver.", 0, 40), "Winds at the receiver."),
			[2],
			practice("a light breeze"),
		),
		tiltDeg: assume(
			list(
				degrees("How far the receiver looks down.", 0, 90),
				"How far the receiver looks down: 0 sideways, 90 straight down. Of a dish that faces the sun it is the sun's altitude.",
			),
			[45],
			practice("the middle of a working day"),
		),
		...air,
		stagnation: part(Stagnation),
	})
	.openapi("ReceiverLossesRequest", {
		description: "Give the dish that lights the receiver, or `absorbedPowerW`.",
	});

export type ReceiverLossesRequest = z.output<typeof ReceiverLossesRequest>;
