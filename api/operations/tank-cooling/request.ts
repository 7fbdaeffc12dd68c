import { z } from "@hono/zod-openapi";
import { practice } from "../../../src/index.ts";
import { air } from "../../parts/still-air.ts";
import { Tank } from "../../parts/tank.ts";
import { assume } from "../../wire/defaults.ts";
import { celsius, hours, metresPerSecond, minutes } from "../../wire/units.ts";

const MOST_LIMITS = 20;
const limit = celsius("Of the tank.", -40, 150);

export const TankCoolingRequest = z
	.strictObject({
		tank: Tank,
		...air,
		windMPerS: assume(
			metresPerSecond("Wind at the tank; a tank in a room stands in still air.", 0, 40),
			2,
			practice("a light breeze"),
		),
		durationH: assume(hours("How long it stands.", 0.5, 168), 24, practice("a day and a night without sun")),
		seriesStepMin: assume(
			minutes("Between rows of the answer's series; at most 672 rows.", 5, 1440),
			30,
			practice("48 rows a day"),
		),
		untilC: assume(
			z.union([limit, z.array(limit).min(1).max(MOST_LIMITS)]).meta({
				description: "Temperatures whose hour is asked for: one, or many.",
				"x-unit": "°C",
			}),
			[60, 55, 50, 45, 40],
			practice("from safe against Legionella down to a warm shower"),
		),
		untilAt: assume(
			z.enum(["mean", "top"]).meta({ description: "Which of the tank's temperatures counts." }),
			"mean",
			practice("what the whole tank holds"),
		),
	})
	.openapi("TankCoolingRequest", {
		description:
			"A tank on its own, standing: nothing is drawn, the loop rests. Its start temperature is 60 °C unless given.",
	});

export type TankCoolingRequest = z.output<typeof TankCoolingRequest>;
