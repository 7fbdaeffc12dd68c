import { z } from "@hono/zod-openapi";
import { backing } from "../../parts/backing.ts";
import {
	celsius,
	hours,
	kilojoulesPerKelvin,
	kilowattHours,
	litres,
	minutes,
	watts,
	wattsPerKelvin,
} from "../../wire/units.ts";

const CLASSES = ["A+", "A", "B", "C", "D", "E", "F", "G"] as const;
const column = (field: z.ZodNumber) => z.array(field).meta({ description: field.description });

const HoursUntil = z
	.strictObject({
		temperatureC: celsius("Temperature of `untilC` in the request."),
		outcome: z.enum(["reached", "later", "never"]).meta({
			description:
				"When the tank falls below the temperature. `reached`: within the requested duration. `later`: after it. `never`: its surroundings are as warm or warmer.",
		}),
		hours: hours(
			"Time from the start until the tank first falls below the temperature; 0 if it starts below. Present only when `outcome` is `reached`.",
		).optional(),
	})
	.openapi("HoursUntil", { description: "Time until the tank falls below a temperature." });

const ClassLimit = z.strictObject({
	energyClass: z.enum(CLASSES).meta({ description: "Energy class of EU 812/2013." }),
	belowW: watts("Standing loss below which a tank is in this class or a better one."),
});

const Standing = z
	.strictObject({
		standingLossW: watts(
			"Standing loss with 65 °C inside and still air of 20 °C around: a difference of 45 K.",
		),
		standingLossKwhPerDay: kilowattHours(
			"Standing loss in a day, with 65 °C inside and still air of 20 °C around.",
		),
		lossCoefficientWPerK: wattsPerKelvin(
			"Heat loss coefficient with 65 °C inside and still air of 20 °C around.",
		),
		storageVolumeL: litres("Storage volume of the tank, which sets the limits of its energy class."),
		energyClass: z.enum(CLASSES).meta({
			description:
				"Energy class of EU 812/2013, the letter on the label. From 500 L, no label is required: see `methods`.",
		}),
		classLimits: z.array(ClassLimit).meta({
			description:
				"Limits of the energy classes at this volume, the best class first. From the last limit up, the class is G.",
		}),
		ecodesignLimitW: watts(
			"Greatest standing loss that EU 814/2013, Annex II, 2.1 allows for a new tank up to 2000 L: the limit of class C.",
		),
		withinEcodesignLimit: z
			.boolean()
			.meta({ description: "Whether the standing loss is within `ecodesignLimitW`." }),
	})
	.openapi("StandingLoss", {
		description: "Standing loss of the tank under the conditions of its energy label, wherever the tank is.",
	});

const CoolingSeries = z
	.strictObject({
		stepMin: minutes("Time between rows; the last interval may be shorter."),
		elapsedMin: column(minutes("Time since the start.")),
		tankMeanC: column(celsius("Mean temperature of the tank.")),
		tankTopC: column(celsius("Temperature of the tank's top layer.")),
		tankBottomC: column(celsius("Temperature of the tank's bottom layer.")),
		tankLossW: column(
			watts(
				"Mean heat loss to the surroundings since the previous row; in the first row, the heat loss at the start.",
			),
		),
	})
	.openapi("CoolingSeries", {
		description: "Tank temperatures and heat loss over time in columns, one row per step.",
	});

export const TankCoolingResponse = z
	.strictObject({
		lossCoefficientWPerK: wattsPerKelvin(
			"Heat loss coefficient of the tank's shell and fittings at the start, in its real surroundings.",
		),
		timeConstantH: hours(
			"Time in which the tank's excess temperature over its surroundings would fall to 37 %.",
		),
		heatCapacityKjPerK: kilojoulesPerKelvin("Heat capacity of the water and the shell."),
		surfaceTemperatureC: celsius("Temperature of the tank's outer surface at the start."),
		surroundingsC: celsius("Temperature of the air around the tank."),
		lossKwh: kilowattHours("Heat lost by the tank over the requested duration."),
		lossKwhPerDay: kilowattHours("Heat lost by the tank per day, on average over the requested duration."),
		endTemperatureC: celsius("Mean temperature of the tank at the end."),
		layerTemperaturesC: column(celsius("Temperature of one layer at the end.")).meta({
			description: "Temperatures of the tank's layers at the end, top first.",
		}),
		hoursUntilC: z
			.array(HoursUntil)
			.meta({ description: "Time until the tank falls below each temperature of `untilC`." }),
		standing: Standing,
		series: CoolingSeries,
		...backing,
	})
	.openapi("TankCoolingResponse");
