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

/** Fields of a day, shared by the operations on it. */
export const daySchema = {
	site: Site,
	date: calendarDate("Local date of the run."),
	startTime: clock(
		"Local time at which the run starts. If omitted: sunrise, or midnight on a day without sunrise.",
	).optional(),
	endTime: clock(
		"Local time at which the run ends. If omitted: sunset, or the last minute of a day without sunset.",
	).optional(),
	targetTemperatureC: assume(
		celsius("Temperature that the water should reach.", 5, 180),
		60,
		unconfirmed(
			handbook(
				"kills Legionella within half an hour",
				"WHO, Legionella and the prevention of legionellosis (2007)",
			),
		),
	),
	targetAt: assume(
		z.enum(["mean", "top", "outlet"]).meta({
			description:
				"Which temperature of the tank must reach the target: the mean, the top layer or the outlet.",
		}),
		"mean",
		practice("represents the heat of the whole tank"),
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
				"Whether to include uncertainty ranges in the response. They take 13 to 40 times as long to compute.",
		}),
		false,
		practice("a response without ranges is fastest"),
	),
	spreads: Spreads.optional(),
};

export const stepSchema = assume(
	z.number().min(15).max(300).meta({ description: "Time step of the simulation.", "x-unit": "s" }),
	120,
	derived("half of it changes the time to target by less than 0.5 %"),
);

export const WarmUpRequest = z
	.strictObject({
		...daySchema,
		...rangeSchema,
		seriesStepMin: assume(
			minutes("Time between rows of the series in the response.", 1, 240),
			15,
			practice("about forty rows in a day"),
		),
		stepS: stepSchema,
	})
	.openapi("WarmUpRequest");

export type WarmUpRequest = z.output<typeof WarmUpRequest>;

/** A day, as the operations on it share it. */
export type DayRequest = Omit<WarmUpRequest, "seriesStepMin">;
