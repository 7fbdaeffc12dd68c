import { z } from "@hono/zod-openapi";
import { practice } from "../../../src/index.ts";
import { Loop } from "../../parts/loop.ts";
import { air } from "../../parts/still-air.ts";
import { wall } from "../../parts/tube.ts";
import { assume, part } from "../../wire/defaults.ts";
import { celsius, metres, metresPerSecond, millimetres, ratio } from "../../wire/units.ts";

const MAX_TUBES = 10;
const MAX_THICKNESSES = 12;
const MAX_STARTS = 20;

const FurtherTube = z
	.strictObject({
		lengthM: metres("Length of the tube.", 0.1, 500),
		innerDiameterMm: millimetres("Inner diameter of the tube.", 2, 200),
		helixDiameterM: metres(
			"Diameter of the helix that the tube is wound to, centre to centre. Omit it for a straight tube.",
			0.02,
			6,
		).optional(),
		material: wall(
			"Material of the tube, which sets its inner roughness.",
			"copper",
			practice("bends easily"),
		),
	})
	.openapi("FurtherTube", {
		description: "Tube that the pump drives the fluid through in addition to the two pipes.",
		example: { lengthM: 12, innerDiameterMm: 10, helixDiameterM: 0.35 },
	});

export const LoopLossesRequest = z
	.strictObject({
		loop: part(Loop),
		supplyTemperatureC: celsius("Temperature of the fluid that leaves the receiver.", -40, 300),
		returnTemperatureC: celsius(
			"Temperature of the fluid that leaves the coil. When omitted: 15 K below the supply, but no colder than the air.",
			-40,
			300,
		).optional(),
		...air,
		windMPerS: assume(metresPerSecond("Wind speed across the pipes.", 0, 40), 2, practice("a light breeze")),
		furtherTubes: assume(
			z.array(FurtherTube).max(MAX_TUBES).meta({
				description:
					"Tubes that the pump drives the fluid through in addition to the pipes: the receiver's tube and the coil. They count for flow and pressure drop, not for heat loss. Their fluid temperature is half-way between supply and return.",
			}),
			[],
			practice("the pipes alone; receiver and coil add pressure drop"),
		),
		addedThicknessMm: assume(
			z
				.array(millimetres("Added thickness of the same insulation on both pipes.", 1, 300))
				.min(1)
				.max(MAX_THICKNESSES)
				.meta({ description: "Added thicknesses of insulation to compare, on both pipes, in rising order." }),
			[10, 20, 30, 40],
			practice("steps of one centimetre"),
		),
		wetMoistFraction: assume(
			ratio("Volume fraction of water in the insulation after rain.", 0, 0.15),
			0.05,
			practice("one season of rain without a cover"),
		),
		coverEmittance: assume(
			ratio("Emittance of the outer surface of a weatherproof cover, for heat radiation.", 0.02, 1),
			0.3,
			practice("weathered sheet aluminium; bright sheet has 0.05, painted sheet 0.9"),
		),
		coldStartTemperatureC: z
			.array(celsius("Temperature of all the fluid in the loop at a pump start.", -40, 300))
			.min(1)
			.max(MAX_STARTS)
			.meta({
				description:
					"Fluid temperatures at which a pump start is computed. When omitted: −10 to 60 °C, within the known range of the fluid.",
				"x-unit": "°C",
			})
			.optional(),
		pumpHoursPerYear: assume(
			z
				.number()
				.min(0)
				.max(8784)
				.meta({ description: "Hours for which the pump runs in a year.", "x-unit": "h" }),
			2000,
			practice("five or six hours of sun a day"),
		),
	})
	.openapi("LoopLossesRequest", {
		description:
			"A loop on its own and its operating temperatures. `loop.control` and `loop.expansionL` are accepted but not used.",
	});

export type LoopLossesRequest = z.output<typeof LoopLossesRequest>;
