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
		ambientC: assume(celsius("Air temperature.", -60, 60), 20, MILD),
		windMPerS: assume(metresPerSecond("Wind at the plant.", 0, 40), 2, practice("a light breeze")),
		sunAltitudeDeg: assume(
			degrees("How high the sun stands, which tilts the receiver.", 0, 90),
			45,
			practice("the middle of a working day"),
		),
	})
	.openapi("LevelAir", { description: "Air and sun's height that go with `beamIrradianceWPerM2`." });

const WATER = {
	mainsTemperatureC: assume(
		celsius("Of the cold feed.", 0, 30),
		10,
		unconfirmed(
			standard("the cold feed that water heaters are rated with", "EN 16147; Regulation (EU) 812/2013"),
		),
	),
	wantedTemperatureC: assume(
		celsius("Of the water at the tap.", 5, 95),
		40,
		standard(
			"a warm shower, and the mixed water that water heaters are rated by",
			"Regulation (EU) 814/2013, Annex I",
		),
	),
	wantedFlowLPerMin: litresPerMinute(
		"Flow that is wanted, in litres at the cold feed. Left out, any flow at the wanted temperature will do.",
		0.05,
		100,
	).optional(),
	linePressureKpa: assume(
		kilopascals("Of the water line, above the air's; 0 for an open line.", 0, 1000),
		200,
		practice("a usual house line"),
	),
};

const Sent = z
	.strictObject({
		site: Site,
		arrangement: assume(
			z.enum(["direct", "vessel"]).meta({
				description:
					"`direct`: the water runs through the receiver, and along `outletPipe` to the tap. `vessel`: the receiver heats a small vessel of oil, and the water runs through a coil in it; the vessel stands at the tap, and no pipe between is reckoned with.",
			}),
			"direct",
			practice("the simplest, and what people ask for first"),
		),
		...WATER,
		dish: Dish,
		receiver: part(Receiver),
		outletPipe: OutletPipe.optional(),
		vessel: OilVesselWire.optional(),
		beamIrradianceWPerM2: assume(
			z
				.array(wattsPerSquareMetre("Beam on a plane normal to it.", 1, 1400))
				.min(1)
				.max(MOST_LEVELS)
				.meta({ description: "Beam levels to answer for, each as if it lasted.", "x-unit": "W/m²" }),
			[400, 600, 800, 1000],
			practice("haze or a low sun, fair, clear, very clear on a mountain"),
		),
		levelAir: part(LevelAir),
		date: calendarDate(
			"Local date. With it the answer has the hours of that day, and the verdict is for the window from `startTime` to `endTime`; without it the verdict is for the beam levels.",
		).optional(),
		startTime: clock(
			"Local time from which the water is wanted. Left out: two hours before solar noon. Only with a date.",
		).optional(),
		endTime: clock(
			"Local time until which it is wanted. Left out: two hours after solar noon. Only with a date.",
		).optional(),
		sky: Sky.optional(),
		stepMin: assume(minutes("Between rows of the day.", 5, 60), 20, practice("some thirty rows a day")),
		largestDiameterM: assume(
			metres("Of the largest dish that the search for a larger one tries.", 0.5, 20),
			12,
			practice("larger ones are no longer built for a house"),
		),
		withRange: assume(
			z.boolean().meta({
				description:
					"Whether to tell between what flow, power and aperture lie, by what is not known exactly.",
			}),
			false,
			practice("the answer for the heater as stated comes fastest"),
		),
		spreads: InstantSpreads.optional(),
	})
	.openapi("InstantRequest", {
		description:
			"An instant heater and what is asked of it. `sky` belongs to a date, `outletPipe` and `vessel` to their arrangements; each may be left out.",
	});

/** A request with the parts that it calls for: the sky of a date, and the vessel or the pipe of an arrangement. */
export const InstantRequest = Sent.transform((request) => ({
	...request,
	sky: request.sky ?? (request.date === undefined ? undefined : Sky.parse({})),
	outletPipe: request.outletPipe ?? (request.arrangement === "direct" ? OutletPipe.parse({}) : undefined),
	vessel: request.vessel ?? (request.arrangement === "vessel" ? OilVesselWire.parse({}) : undefined),
}));

export type InstantRequest = z.output<typeof InstantRequest>;
