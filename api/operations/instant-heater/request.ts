import { z } from "@hono/zod-openapi";
import { practice, standard, unconfirmed } from "../../../src/index.ts";
import { Dish } from "../../parts/dish.ts";
import { Receiver } from "../../parts/receiver.ts";
import { Site } from "../../parts/site.ts";
import { Sky } from "../../parts/sky.ts";
import { calendarDate } from "../../wire/calendar.ts";
import { clock } from "../../wire/clock-time.ts";
import { assume, part } from "../../wire/defaults.ts";
import {
	celsius,
	degrees,
	kilopascals,
	litresPerMinute,
	metres,
	metresPerSecond,
	minutes,
	wattsPerSquareMetre,
} from "../../wire/units.ts";
import { OutletPipe } from "./outlet-pipe.ts";
import { InstantSpreads } from "./spread.ts";
import { OilVesselWire } from "./vessel.ts";

const MOST_LEVELS = 24;
const MILD = practice("a mild day");

const LevelAir = z
	.strictObject({
		ambientC: assume(celsius("Air temperature that goes with the beam levels.", -60, 60), 20, MILD),
		windMPerS: assume(
			metresPerSecond("Wind speed at the receiver that goes with the beam levels.", 0, 40),
			2,
			practice("a light breeze"),
		),
		sunAltitudeDeg: assume(
			degrees("Altitude of the sun, which sets the tilt of the receiver.", 0, 90),
			45,
			practice("the middle of a working day"),
		),
	})
	.openapi("LevelAir", {
		description: "Air, wind and altitude of the sun that go with `beamIrradianceWPerM2`.",
	});

const WATER = {
	mainsTemperatureC: assume(
		celsius("Temperature of the cold feed.", 0, 30),
		10,
		unconfirmed(
			standard("the cold feed that water heaters are rated with", "EN 16147; Regulation (EU) 812/2013"),
		),
	),
	wantedTemperatureC: assume(
		celsius("Temperature wanted at the tap.", 5, 95),
		40,
		standard(
			"a warm shower, and the mixed water that water heaters are rated by",
			"Regulation (EU) 814/2013, Annex I",
		),
	),
	wantedFlowLPerMin: litresPerMinute(
		"Wanted flow, measured at the cold feed. If omitted, any flow at the wanted temperature meets the request.",
		0.05,
		100,
	).optional(),
	linePressureKpa: assume(
		kilopascals("Gauge pressure of the water line; 0 for an open line.", 0, 1000),
		200,
		practice("typical of a house line"),
	),
};

const RawRequest = z
	.strictObject({
		site: Site,
		arrangement: assume(
			z.enum(["direct", "vessel"]).meta({
				description:
					"Arrangement of the heater. `direct`: the water runs through the receiver and then through `outletPipe` to the tap. `vessel`: the receiver heats a small oil vessel, and the water runs through a coil in it. The vessel is at the tap, without a pipe between.",
			}),
			"direct",
			practice("the simplest arrangement and the most common request"),
		),
		...WATER,
		dish: Dish,
		receiver: part(Receiver),
		outletPipe: OutletPipe.optional(),
		vessel: OilVesselWire.optional(),
		beamIrradianceWPerM2: assume(
			z
				.array(wattsPerSquareMetre("Beam irradiance on a plane normal to the beam.", 1, 1400))
				.min(1)
				.max(MOST_LEVELS)
				.meta({
					description: "Beam levels to compute the heater for, each as a steady state.",
					"x-unit": "W/m²",
				}),
			[400, 600, 800, 1000],
			practice("haze or a low sun, fair, clear, very clear on a mountain"),
		),
		levelAir: part(LevelAir),
		date: calendarDate(
			"Local date. If sent, the response includes the hours of that day, and `outcome` applies to the window from `startTime` to `endTime`. If omitted, `outcome` applies to the beam levels.",
		).optional(),
		startTime: clock(
			"Local time from which hot water is wanted. If omitted, two hours before solar noon. Only with `date`.",
		).optional(),
		endTime: clock(
			"Local time until which hot water is wanted. If omitted, two hours after solar noon. Only with `date`.",
		).optional(),
		sky: Sky.optional(),
		stepMin: assume(
			minutes("Time between rows of the day's series.", 5, 60),
			20,
			practice("about thirty rows a day"),
		),
		largestDiameterM: assume(
			metres(
				"Diameter of the largest dish to consider when searching for one that meets the request.",
				0.5,
				20,
			),
			12,
			practice("larger dishes are not built for a house"),
		),
		withRange: assume(
			z.boolean().meta({
				description: "Whether to include uncertainty ranges of flow, power and aperture.",
			}),
			false,
			practice("the result for the heater as stated is computed fastest"),
		),
		spreads: InstantSpreads.optional(),
	})
	.openapi("InstantRequest", {
		description:
			"An instant heater and the water wanted from it. `sky` requires `date`; `outletPipe` and `vessel` belong to their arrangements. All three can be omitted.",
	});

/** A request completed with the sky of its date and the vessel or pipe of its arrangement. */
export const InstantRequest = RawRequest.transform((request) => ({
	...request,
	sky: request.sky ?? (request.date === undefined ? undefined : Sky.parse({})),
	outletPipe: request.outletPipe ?? (request.arrangement === "direct" ? OutletPipe.parse({}) : undefined),
	vessel: request.vessel ?? (request.arrangement === "vessel" ? OilVesselWire.parse({}) : undefined),
}));

export type InstantRequest = z.output<typeof InstantRequest>;
