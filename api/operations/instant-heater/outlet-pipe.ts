import { z } from "@hono/zod-openapi";
import { practice } from "../../../src/index.ts";
import { insulation } from "../../parts/insulation.ts";
import { tube, wall } from "../../parts/tube.ts";
import { assume, part } from "../../wire/defaults.ts";
import { litres, metres, minutes } from "../../wire/units.ts";

const OutletInsulation = insulation(
	"mineralWool",
	25,
	practice("withstands steam from a dry receiver; the same thickness as on a plant's pipes"),
	300,
).openapi("OutletInsulation", { description: "Insulation of the pipe to the tap." });

export const OutletPipe = z
	.strictObject({
		lengthM: assume(
			metres(
				"Length of the pipe from the receiver to the tap; 0 where the water is drawn at the focus.",
				0,
				200,
			),
			3,
			practice("from the focus of a small dish, down its mount, to a tap beside it"),
		),
		...tube(13, 15, practice("15 mm copper tube, common for taps")),
		material: wall("Material of the pipe to the tap.", "copper", practice("easy to bend and solder")),
		insulation: part(OutletInsulation),
	})
	.openapi("OutletPipe", {
		description:
			"Pipe from the receiver to the tap. The water leaves the receiver hotter than wanted by the heat that the pipe loses.",
		example: { lengthM: 5, insulation: { thicknessMm: 0 } },
	});

export type OutletPipe = z.output<typeof OutletPipe>;

export const OutletAnswer = z
	.strictObject({
		contentL: litres("Volume of water in the pipe to the tap."),
		untilHotL: litres(
			"Volume that runs from the tap before hot water arrives: the pipe's content and the water that warms its metal. The pipe starts cold and the receiver hot. Hot and cold water do not mix.",
		),
		untilHotMin: minutes(
			"Time until hot water arrives at the tap, at the wanted flow or, without one, at the steady flow under the strongest beam. Absent where no flow is possible.",
		).optional(),
	})
	.openapi("InstantOutlet", { description: "Content and warm-up of the pipe from the receiver to the tap." });
