import { z } from "@hono/zod-openapi";
import type { DayOutcome } from "../../../src/index.ts";
import { isoTexts } from "../../wire/time-zone.ts";
import {
	celsius,
	degrees,
	fromSi,
	litresPerMinute,
	minutes,
	watts,
	wattsPerSquareMetre,
} from "../../wire/units.ts";

export const DaySeries = z
	.strictObject({
		stepMin: minutes("Time between rows; the last interval may be shorter."),
		time: z
			.array(z.string().openapi({ description: "Local time of the row.", format: "date-time" }))
			.meta({ description: "Local time of each row." }),
		sunAltitudeDeg: z.array(degrees("Apparent altitude of the sun; negative below the horizon.")),
		beamIrradianceWPerM2: z.array(wattsPerSquareMetre("Beam irradiance on a plane that faces the sun.")),
		ambientC: z.array(celsius("Air temperature.")),
		tankMeanC: z.array(celsius("Mean temperature of the tank.")),
		tankTopC: z.array(celsius("Temperature of the tank's top layer.")),
		tankBottomC: z.array(celsius("Temperature of the tank's bottom layer.")),
		oilHotC: z.array(celsius("Temperature of the fluid leaving the receiver.")),
		oilColdC: z.array(celsius("Temperature of the fluid entering the receiver.")),
		flowLPerMin: z.array(litresPerMinute("Flow in the loop.")),
		powerToFluidW: z.array(watts("Power from the receiver to the fluid.")),
		powerToWaterW: z.array(watts("Power from the coil to the water.")),
		tankLossW: z.array(watts("Heat loss from the tank to its surroundings.")),
	})
	.openapi("DaySeries", {
		description:
			"Time series of the run as columns, one row per step. Temperatures, sun and weather are instantaneous; powers and flow are means since the previous row.",
	});

export function wireSeries(
	series: DayOutcome["series"],
	zone: string,
	step: number,
): z.input<typeof DaySeries> {
	return {
		stepMin: fromSi.minutes(step),
		time: isoTexts(series.time, zone),
		sunAltitudeDeg: series.sunAltitude.map(fromSi.degrees),
		beamIrradianceWPerM2: [...series.beam],
		ambientC: series.ambient.map(fromSi.celsius),
		tankMeanC: series.tankMean.map(fromSi.celsius),
		tankTopC: series.tankTop.map(fromSi.celsius),
		tankBottomC: series.tankBottom.map(fromSi.celsius),
		oilHotC: series.oilHot.map(fromSi.celsius),
		oilColdC: series.oilCold.map(fromSi.celsius),
		flowLPerMin: series.flow.map(fromSi.litresPerMinute),
		powerToFluidW: [...series.powerToFluid],
		powerToWaterW: [...series.powerToWater],
		tankLossW: [...series.tankLoss],
	};
}
