import { z } from "@hono/zod-openapi";
import { practice } from "../../../src/index.ts";
import { Loop } from "../../parts/loop.ts";
import { air } from "../../parts/still-air.ts";
import { wall } from "../../parts/tube.ts";
import { assume, part } from "../../wire/defaults.ts";
import { celsius, metres, metresPerSecond, millimetres, ratio } from "../../wire/units.ts";

const MOST_TUBES = 10;
const MOST_THICKER = 12;
const MOST_STARTS = 20;

const FurtherTube = z
	.strictObject({
		lengthM: metres("Along the tube.", 0.1, 500),
		innerDiameterMm: millimetres("Bore.", 2, 200),
		helixDiameterM: metres(
			"Of the helix that it is wound to, centre to centre. Absent where it is straight.",
			0.02,
			6,
		).optional(),
		material: wall("What it is made of: how rough it is inside.", "copper", practice("bends easily")),
	})
	.openapi("FurtherTube", {
		description: "A tube that the pump pushes the fluid through besides the two pipes.",
		example: { lengthM: 12, innerDiameterMm: 10, helixDiameterM: 0.35 },
	});

export const LoopLossesRequest = z
	.strictObject({
		loop: part(Loop),
		supplyTemperatureC: celsius("Of the fluid that leaves the receiver.", -40, 300),
		returnTemperatureC: celsius(
			"Of the fluid that leaves the coil. Left out: 15 K below the supply, no colder than the air.",
			-40,
			300,
		).optional(),
		...air,
		windMPerS: assume(metresPerSecond("Wind across the pipes.", 0, 40), 2, practice("a light breeze")),
		furtherTubes: assume(
			z.array(FurtherTube).max(MOST_TUBES).meta({
				description:
					"What else the pump pushes the fluid through: the receiver's tube and the coil. They count for flow and pressure, not for heat, and are taken half-way between supply and return.",
			}),
			[],
			practice("the pipes alone; receiver and coil add to the pump's work"),
		),
		addedThicknessMm: assume(
			z
				.array(millimetres("More of the same lagging, on both pipes.", 1, 300))
				.min(1)
				.max(MOST_THICKER)
				.meta({ description: "Thicker lagging to compare with, on both pipes, rising." }),
			[10, 20, 30, 40],
			practice("each further centimetre"),
		),
		wetMoistFraction: assume(
			ratio("Water in the lagging, by volume, once rain has been at it.", 0, 0.15),
			0.05,
			practice("rained on for a season without a cover"),
		),
		coverEmittance: assume(
			ratio("Of the outside of a weatherproof cover, for heat radiation.", 0.02, 1),
			0.3,
			practice("weathered sheet aluminium; bright it has 0.05, painted 0.9"),
		),
		coldStartTemperatureC: z
			.array(celsius("Of all the fluid in the loop.", -40, 300))
			.min(1)
			.max(MOST_STARTS)
			.meta({
				description:
					"Temperatures of the fluid to start the pump at. Left out: −10 to 60 °C, as far as the fluid is known.",
				"x-unit": "°C",
			})
			.optional(),
		pumpHoursPerYear: assume(
			z.number().min(0).max(8784).meta({ description: "That the pump runs in a year.", "x-unit": "h" }),
			2000,
			practice("five or six hours of sun a day"),
		),
	})
	.openapi("LoopLossesRequest", {
		description:
			"A loop on its own, and the temperatures that it runs at. `loop.control` and `loop.expansionL` may stand in it and play no part.",
	});

export type LoopLossesRequest = z.output<typeof LoopLossesRequest>;
