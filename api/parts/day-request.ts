import { z } from "@hono/zod-openapi";
import { derived, handbook, practice, unconfirmed } from "../../src/index.ts";
import { calendarDate } from "../wire/calendar.ts";
import { clock } from "../wire/clock-time.ts";
import { assume, part } from "../wire/defaults.ts";
import { celsius, minutes } from "../wire/units.ts";
import { Coil } from "./coil.ts";
import { Dish } from "./dish.ts";
import { Draw } from "./draw.ts";
import { Loop } from "./loop.ts";
import { Receiver } from "./receiver.ts";
import { Site } from "./site.ts";
import { Sky } from "./sky.ts";
import { Spreads } from "./spread.ts";
import { Tank } from "./tank.ts";

/** What a day is made of, whatever is asked about it. */
export const daySchema = {
	site: Site,
	date: calendarDate("Local date of the run."),
	startTime: clock(
		"Local time at which the run starts. Left out: sunrise, or midnight where the sun does not rise.",
	).optional(),
	endTime: clock(
		"Local time at which it ends. Left out: sunset, or the last minute of the day where the sun does not set.",
	).optional(),
	targetTemperatureC: assume(
		celsius("What the water is to reach.", 5, 180),
		60,
		unconfirmed(
			handbook(
				"kills Legionella within half an hour",
				"WHO, Legionella and the prevention of legionellosis (2007)",
			),
		),
	),
	targetAt: assume(
		z.enum(["mean", "top", "outlet"]).meta({ description: "Which of the tank's temperatures counts." }),
		"mean",
		practice("what the whole tank holds"),
	),
	sky: part(Sky),
	dish: Dish,
	receiver: part(Receiver),
	loop: part(Loop),
	coil: part(Coil),
	tank: Tank,
	draw: part(Draw),
};

export const rangeSchema = {
	withRange: assume(
		z.boolean().meta({
			description:
				"Whether to tell between what the answer lies, by what is not known exactly. It takes 13 to 40 times as long.",
		}),
		false,
		practice("the answer for the plant as stated comes fastest"),
	),
	spreads: Spreads.optional(),
};

export const stepSchema = assume(
	z.number().min(15).max(300).meta({ description: "Step of the march in time.", "x-unit": "s" }),
	120,
	derived("half of it moves the time to target by less than 0.5 %"),
);

export const WarmUpRequest = z
	.strictObject({
		...daySchema,
		...rangeSchema,
		seriesStepMin: assume(
			minutes("Between rows of the answer's series.", 1, 240),
			15,
			practice("about forty rows a day"),
		),
		stepS: stepSchema,
	})
	.openapi("WarmUpRequest");

export type WarmUpRequest = z.output<typeof WarmUpRequest>;

/** What a day is planned from, whatever is asked about it. */
export type DayRequest = Omit<WarmUpRequest, "seriesStepMin">;
