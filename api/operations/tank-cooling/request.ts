import { z } from "@hono/zod-openapi";
import { practice } from "../../../src/index.ts";
import { air } from "../../parts/still-air.ts";
import { Tank } from "../../parts/tank.ts";
import { assume } from "../../wire/defaults.ts";
import { celsius, hours, metresPerSecond, minutes } from "../../wire/units.ts";

const MAX_LIMITS = 20;
const limit = celsius("Tank temperature.", -40, 150);

export const TankCoolingRequest = z
	.strictObject({
		tank: Tank,
		...air,
		windMPerS: assume(
			metresPerSecond("Wind speed at the tank. A tank in a room is in still air.", 0, 40),
			2,
			practice("a light breeze"),
		),
		durationH: assume(
			hours("Time over which the tank cools.", 0.5, 168),
			24,
			practice("a day and a night without sun"),
		),
		seriesStepMin: assume(
			minutes("Time between rows of the series, which has at most 672 rows.", 5, 1440),
			30,
			practice("48 rows a day"),
		),
		untilC: assume(
			z.union([limit, z.array(limit).min(1).max(MAX_LIMITS)]).meta({
				description:
					"Temperatures for which the time until the tank falls below them is computed: one number or a list.",
				"x-unit": "°C",
			}),
			[60, 55, 50, 45, 40],
			practice("from safe against Legionella to a warm shower"),
		),
		untilAt: assume(
			z
				.enum(["mean", "top"])
				.meta({ description: "Tank temperature that is compared with `untilC`: the mean or the top layer." }),
			"mean",
			practice("the mean shows the heat in the whole tank"),
		),
	})
	.openapi("TankCoolingRequest", {
		description:
			"A tank on its own at rest: no water is drawn and the loop is off. Its start temperature is 60 °C when omitted.",
	});

export type TankCoolingRequest = z.output<typeof TankCoolingRequest>;
