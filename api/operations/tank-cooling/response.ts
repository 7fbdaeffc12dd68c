import { z } from "@hono/zod-openapi";
import { Assumed } from "../../parts/assumed.ts";
import { Caution } from "../../parts/caution.ts";
import { Method } from "../../parts/method.ts";
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
const column = (field: z.ZodNumber) => z.array(field);

const HoursUntil = z
	.strictObject({
		temperatureC: celsius("As asked."),
		outcome: z.enum(["reached", "later", "never"]).meta({
			description:
				"Whether the tank falls under it in this time, later than that, or never, because its surroundings are as warm.",
		}),
		hours: hours(
			"From the start until it is first under it; 0 if it starts so. Absent unless reached.",
		).optional(),
	})
	.openapi("HoursUntil");

const ClassLimit = z.strictObject({
	energyClass: z.enum(CLASSES),
	belowW: watts("Most standing loss, not itself in the class."),
});

const Standing = z
	.strictObject({
		standingLossW: watts("At 65 °C inside and 20 °C in still air around: 45 K."),
		standingLossKwhPerDay: kilowattHours("The same over a day."),
		lossCoefficientWPerK: wattsPerKelvin("At those temperatures."),
		storageVolumeL: litres("Of the vessel, which the class goes by."),
		energyClass: z.enum(CLASSES).meta({
			description: "Of EU 812/2013, the letter on the label. From 500 L up no label is asked: see `methods`.",
		}),
		classLimits: z.array(ClassLimit).meta({
			description:
				"Standing losses that part the classes at this volume, the best first; above the last is G.",
		}),
		ecodesignLimitW: watts(
			"Most that EU 814/2013, Annex II, 2.1 allows a new tank up to 2000 L: the end of class C.",
		),
		withinEcodesignLimit: z.boolean().meta({ description: "Whether it loses no more than that." }),
	})
	.openapi("StandingLoss", {
		description: "The tank under the conditions of its label, wherever it stands.",
	});

const CoolingSeries = z
	.strictObject({
		stepMin: minutes("Between one row and the next; the last may be nearer."),
		elapsedMin: column(minutes("Since the start.")),
		tankMeanC: column(celsius("Mean of the layers.")),
		tankTopC: column(celsius("Top layer.")),
		tankBottomC: column(celsius("Bottom layer.")),
		tankLossW: column(
			watts("To the surroundings, the mean since the row before; of the first row as it begins."),
		),
	})
	.openapi("CoolingSeries", { description: "The tank in columns, one row per step." });

export const TankCoolingResponse = z
	.strictObject({
		lossCoefficientWPerK: wattsPerKelvin("Of the shell and its fittings at the start, where it stands."),
		timeConstantH: hours("In which its excess over the surroundings would fall to 37 %."),
		heatCapacityKjPerK: kilojoulesPerKelvin("Of water and shell."),
		surfaceTemperatureC: celsius("Of its outside at the start."),
		surroundingsC: celsius("Of the air around it."),
		lossKwh: kilowattHours("Over the whole time."),
		lossKwhPerDay: kilowattHours("The same, as a mean over a day."),
		endTemperatureC: celsius("Mean at the end."),
		layerTemperaturesC: column(celsius("Of a layer.")).meta({ description: "At the end, top first." }),
		hoursUntilC: z.array(HoursUntil).meta({ description: "When it falls under each temperature asked for." }),
		standing: Standing,
		series: CoolingSeries,
		cautions: z.array(Caution).meta({ description: "What to be careful of, the most serious first." }),
		assumed: z
			.array(Assumed)
			.meta({ description: "Every value that the request left out, and why this one." }),
		methods: z.array(Method).meta({ description: "What the numbers rest on." }),
	})
	.openapi("TankCoolingResponse");
