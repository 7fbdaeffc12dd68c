import { z } from "@hono/zod-openapi";
import { practice } from "../../../src/index.ts";
import { insulation } from "../../parts/insulation.ts";
import { tube, wall } from "../../parts/tube.ts";
import { assume, part } from "../../wire/defaults.ts";
import { litres, metres, minutes } from "../../wire/units.ts";

const OutletInsulation = insulation(
	"mineralWool",
	25,
	practice("stands the steam of a dry receiver, and as thick as a plant's pipes have it"),
	300,
).openapi("OutletInsulation", { description: "Lagging around the pipe to the tap." });

export const OutletPipe = z
	.strictObject({
		lengthM: assume(
			metres("From the receiver to the tap; 0 where the water is drawn at the focus.", 0, 200),
			3,
			practice("from the focus of a small dish down its mount to a tap beside it"),
		),
		...tube(13, 15, practice("15 mm copper tube, as taps are fed by")),
		material: wall("What the pipe is made of.", "copper", practice("bends and solders easily")),
		insulation: part(OutletInsulation),
	})
	.openapi("OutletPipe", {
		description:
			"The pipe that brings the water from the receiver to the tap. The water leaves the receiver hotter by what the pipe loses.",
		example: { lengthM: 5, insulation: { thicknessMm: 0 } },
	});

export type OutletPipe = z.output<typeof OutletPipe>;

export const OutletAnswer = z
	.strictObject({
		contentL: litres("Water that the pipe holds."),
		untilHotL: litres(
			"Water that runs from the tap before it comes hot: the pipe's own, and as much as warms its metal. The pipe counts as cold and the receiver as hot at the start; hot water pushes the cold before it unmixed.",
		),
		untilHotMin: minutes(
			"For that to run, at the wanted flow, and without one at the steady flow under the best sun. Absent where nothing flows.",
		).optional(),
	})
	.openapi("InstantOutlet", { description: "The pipe from the receiver to the tap." });
