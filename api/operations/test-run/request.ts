import { z } from "@hono/zod-openapi";
import { practice } from "../../../src/index.ts";
import { Coil } from "../../parts/coil.ts";
import { Dish } from "../../parts/dish.ts";
import { Loop } from "../../parts/loop.ts";
import { Receiver } from "../../parts/receiver.ts";
import { Site } from "../../parts/site.ts";
import { Tank } from "../../parts/tank.ts";
import { instant } from "../../wire/calendar.ts";
import { assume } from "../../wire/defaults.ts";
import { celsius, kelvinDifference, metresPerSecond, wattsPerSquareMetre } from "../../wire/units.ts";

export const MOST_ROWS = 1500; // a day by the minute, and an hour more
const MOST_THERMOMETERS = 20;

const rows = <T extends z.ZodType>(cell: T) => z.array(cell).min(2).max(MOST_ROWS);
const column = (field: z.ZodNumber) => rows(field).meta(field.meta() ?? {});
const oneOrColumn = (field: z.ZodNumber) =>
	z
		.union([field, rows(field)])
		.meta({ ...field.meta(), description: `${field.description} One value for the run, or one per row.` });
const water = (description: string) => celsius(description, -50, 200);

const MeasuredRun = z
	.strictObject({
		time: rows(instant("Time of the row.")).meta({
			description:
				"Times of the rows, in rising order. One row per minute gives the most information; ASAE S580 requires ten minutes.",
		}),
		tankTemperatureC: z
			.union([
				column(water("Temperature of the tank's water, one value per row.")),
				z
					.array(rows(water("Temperature of the water in one part of the tank.")))
					.min(1)
					.max(MOST_THERMOMETERS),
			])
			.meta({
				description:
					"Temperature of the tank's water: one column with a value per row, or a list of columns for thermometers in equal parts of the tank, top first.",
				"x-unit": "°C",
			}),
		beamIrradianceWPerM2: column(
			wattsPerSquareMetre("Beam irradiance on a plane that faces the sun, one value per row.", 0, 2000),
		).optional(),
		ambientC: oneOrColumn(celsius("Air temperature in the shade.", -60, 60)).optional(),
		windMPerS: oneOrColumn(
			metresPerSecond("Wind speed at the plant. If omitted, 2 m/s is used for the prediction.", 0, 40),
		).optional(),
		oilInC: column(
			celsius("Temperature of the fluid entering the receiver, one value per row.", -60, 400),
		).optional(),
		oilOutC: column(
			celsius("Temperature of the fluid leaving the receiver, one value per row.", -60, 400),
		).optional(),
		pumpOn: rows(z.boolean())
			.meta({
				description:
					"Whether the dish heats the tank from this row to the next. If omitted, true except during half an hour or more without beam.",
			})
			.optional(),
	})
	.openapi("MeasuredRun", {
		description:
			"Readings of a plant in operation as columns of equal length. Nothing may be drawn from the tank.",
	});

export const TestRunRequest = z
	.strictObject({
		run: MeasuredRun,
		tank: Tank,
		thermometerResolutionK: assume(
			kelvinDifference("Resolution of the tank's thermometer.", 0.001, 5),
			0.1,
			practice("the last digit of a common digital thermometer"),
		),
		site: Site.optional(),
		dish: Dish.optional(),
		receiver: Receiver.optional(),
		loop: Loop.optional(),
		coil: Coil.optional(),
	})
	.openapi("TestRunRequest", {
		description:
			"A measured run and its tank. Dish, beam and air temperature add efficiency and factors. With a site as well, the run is compared with the prediction for the plant as described.",
	});

export type TestRunRequest = z.output<typeof TestRunRequest>;
