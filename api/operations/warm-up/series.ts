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
		stepMin: minutes("Between one row and the next; the last may be nearer."),
		time: z.array(z.string().openapi({ format: "date-time" })).meta({ description: "Of the row." }),
		sunAltitudeDeg: z.array(degrees("Apparent; negative below the horizon.")),
		beamIrradianceWPerM2: z.array(wattsPerSquareMetre("On a plane that faces the sun.")),
		ambientC: z.array(celsius("Air.")),
		tankMeanC: z.array(celsius("Mean of the layers.")),
		tankTopC: z.array(celsius("Top layer.")),
		tankBottomC: z.array(celsius("Bottom layer.")),
		oilHotC: z.array(celsius("Fluid leaving the receiver.")),
		oilColdC: z.array(celsius("Fluid entering the receiver.")),
		flowLPerMin: z.array(litresPerMinute("In the loop.")),
		powerToFluidW: z.array(watts("Receiver to fluid.")),
		powerToWaterW: z.array(watts("Coil to water.")),
		tankLossW: z.array(watts("Tank to its surroundings.")),
	})
	.openapi("DaySeries", {
		description:
			"The run in columns, one row per step: temperatures, sun and weather at the row's instant, powers and flow as the mean since the row before.",
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
