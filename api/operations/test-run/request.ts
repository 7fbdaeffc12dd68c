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
		.meta({ ...field.meta(), description: `${field.description} One value, or one per row.` });
const water = (description: string) => celsius(description, -50, 200);

const MeasuredRun = z
	.strictObject({
		time: rows(instant("When the row was read.")).meta({
			description:
				"When each row was read, rising. By the minute tells most; ten minutes is what ASAE S580 asks.",
		}),
		tankTemperatureC: z
			.union([
				column(water("Of the tank, one per row.")),
				z
					.array(rows(water("Of a share of the tank.")))
					.min(1)
					.max(MOST_THERMOMETERS),
			])
			.meta({
				description:
					"Of the water, one per row; or a list of such columns, of thermometers in equal shares of the tank, top first.",
				"x-unit": "°C",
			}),
		beamIrradianceWPerM2: column(
			wattsPerSquareMetre("Beam on a plane that faces the sun, one per row.", 0, 2000),
		).optional(),
		ambientC: oneOrColumn(celsius("Air temperature in the shade.", -60, 60)).optional(),
		windMPerS: oneOrColumn(
			metresPerSecond(
				"Wind at the plant. Left out: 2 m/s, where the run is compared with a prediction.",
				0,
				40,
			),
		).optional(),
		oilInC: column(celsius("Of the fluid that enters the receiver, one per row.", -60, 400)).optional(),
		oilOutC: column(celsius("Of the fluid that leaves the receiver, one per row.", -60, 400)).optional(),
		pumpOn: rows(z.boolean())
			.meta({
				description:
					"Whether the dish heats the tank from this row to the next. Left out: always, but for half an hour or more without beam.",
			})
			.optional(),
	})
	.openapi("MeasuredRun", {
		description:
			"Readings of a plant at work, row by row, as columns of one length. Nothing is drawn from the tank.",
	});

export const TestRunRequest = z
	.strictObject({
		run: MeasuredRun,
		tank: Tank,
		thermometerResolutionK: assume(
			kelvinDifference("Smallest step that the tank's thermometer shows.", 0.001, 5),
			0.1,
			practice("the last digit of a usual digital thermometer"),
		),
		site: Site.optional(),
		dish: Dish.optional(),
		receiver: Receiver.optional(),
		loop: Loop.optional(),
		coil: Coil.optional(),
	})
	.openapi("TestRunRequest", {
		description:
			"A measured run and its tank. With a dish, beam and air it tells efficiency and factors; with a site besides, it is compared with the prediction for the plant as described.",
	});

export type TestRunRequest = z.output<typeof TestRunRequest>;
