import { z } from "@hono/zod-openapi";
import { backing } from "../../parts/backing.ts";
import { Caution } from "../../parts/caution.ts";
import {
	celsius,
	kelvinDifference,
	kilojoulesPerKelvin,
	kilowattHours,
	minutes,
	ratio,
	watts,
	wattsPerKelvin,
	wattsPerSquareMetre,
} from "../../wire/units.ts";
import { RunAdvice } from "./advice.ts";
import { Factor, Need } from "./factor.ts";

const localTime = (description: string) => z.string().openapi({ description, format: "date-time" });

const StandardPowerLine = z
	.strictObject({
		outcome: z.enum(["determined", "intervalTooWide"]).meta({
			description:
				"Whether the figure is reliable. `intervalTooWide`: half of the wider 95 % interval is more than half the single figure.",
		}),
		powerAt50KW: watts(
			"Standardised power with the water 50 K above the air: the single figure of ASAE S580.",
		),
		uncertaintyFromResolutionW: watts(
			"Half of the 95 % interval of `powerAt50KW` due to the thermometer's resolution alone.",
		),
		uncertaintyFromScatterW: watts(
			"Half of the 95 % interval of `powerAt50KW` due to the scatter of the points about the line.",
		),
		interceptW: watts("Standardised power of the regression line with the water at air temperature."),
		slopeWPerK: wattsPerKelvin(
			"Slope of the regression line: change of standardised power per kelvin of water above air.",
		),
		rSquared: ratio("Coefficient of determination of the regression line."),
		intervalsCounted: z
			.int()
			.meta({ description: "Number of intervals that the regression line is fitted to.", "x-unit": "1" }),
		intervalsLeftOut: z.int().meta({
			description: "Number of intervals with less than 450 W/m² of beam, which are excluded.",
			"x-unit": "1",
		}),
		extrapolated: z
			.boolean()
			.meta({ description: "Whether 50 K is outside the temperature differences of the points." }),
		asInStandard: z.boolean().meta({
			description:
				"Whether intervals, beam, air, water, number of points and r² are within the limits of ASAE S580 (limits not yet compared with its text; its wind and load limits are not checked).",
		}),
	})
	.openapi("StandardPowerLine");

const NoStandardPower = z
	.strictObject({
		outcome: z.literal("undetermined").meta({ description: "The run gives no standardised power." }),
		reason: z.enum(["notMeasured", "tooFewIntervals", "noSpread"]).meta({
			description:
				"Why there is no standardised power. `notMeasured`: beam or air temperature is missing. `tooFewIntervals`: fewer than five ten-minute intervals with 450 W/m² or more. `noSpread`: the difference between water and air changed by less than 1 K.",
		}),
	})
	.openapi("NoStandardPower");

const Cause = z.enum(["optics", "losses", "tankLoss"]).meta({
	description:
		"Cause of a gap. `optics`: light that reaches the absorber. `losses`: heat loss of receiver and loop, including the tank where no rows at rest separate it. `tankLoss`: heat loss of the tank.",
});

const Share = z
	.strictObject({
		cause: Cause,
		ratio: Factor.meta({
			description: "Value of the plant as built divided by that of the plant as described.",
		}),
		powerW: watts(
			"Change of the mean power due to this cause alone. Absent where its ratio is undetermined.",
		).optional(),
		powerUncertaintyW: watts("Half of the 95 % interval of `powerW`. Absent where `powerW` is.").optional(),
		differs: z.boolean().meta({ description: "Whether the 95 % interval of the ratio excludes 1." }),
	})
	.openapi("GapShare");

const Compared = z
	.strictObject({
		outcome: z.literal("compared").meta({ description: "The run was compared with a prediction." }),
		predictedMeanPowerW: watts(
			"Predicted mean power stored in water and tank wall, for the plant as described.",
		),
		predictedEndTemperatureC: celsius("Predicted temperature of the water at the last row."),
		gapW: watts("Measured minus predicted mean power."),
		gapUncertaintyW: watts("Half of the 95 % interval of `gapW` due to the thermometer alone."),
		endDifferenceK: kelvinDifference("Measured minus predicted temperature of the water at the last row."),
		verdict: z.enum(["none", "explained", "undetermined"]).meta({
			description:
				"Result of the comparison. `explained`: the 95 % interval of at least one ratio excludes 1. `none`: no ratio does, and the gap is within the thermometer's noise. `undetermined`: otherwise.",
		}),
		explainedBy: z
			.array(Cause)
			.meta({ description: "Causes whose ratio differs from 1, the most important first." }),
		causes: z.array(Share).meta({ description: "Possible causes of the gap, each with its share." }),
		unexplainedW: watts(
			"Part of the gap that the separate causes do not explain: their interaction and other causes.",
		),
	})
	.openapi("RunCompared");

const NotCompared = z
	.strictObject({
		outcome: z.literal("notCompared").meta({ description: "The run was not compared with a prediction." }),
		needs: z.array(Need).meta({ description: "What the request lacks for a comparison." }),
	})
	.openapi("RunNotCompared");

const column = (field: z.ZodNumber) => z.array(field).meta(field.meta() ?? {});

const Series = z
	.strictObject({
		time: z.array(localTime("Local time at the end of the interval.")),
		lengthMin: column(minutes("Length of the interval: ten minutes, or as close as the rows allow.")),
		waterTemperatureC: column(celsius("Mean temperature of the water over the interval.")),
		deliveredPowerW: column(watts("Power stored in water and tank wall over the interval.")),
		powerUncertaintyW: column(
			watts("Half of the 95 % interval of the power, due to the thermometer's resolution."),
		),
		beamIrradianceWPerM2: column(wattsPerSquareMetre("Mean beam irradiance over the interval.")).optional(),
		ambientC: column(celsius("Mean air temperature over the interval.")).optional(),
		predictedTemperatureC: column(
			celsius("Predicted temperature of the water at the end of the interval."),
		).optional(),
	})
	.openapi("TestRunSeries");

const Unlock = z
	.strictObject({
		need: Need,
		pointers: z
			.array(z.string())
			.meta({ description: "JSON pointers to the request fields that provide it." }),
		factors: z
			.array(z.string())
			.meta({ description: "Paths of the fields in this response that it would determine." }),
		message: z.string().meta({ description: "What to measure, as an English sentence." }),
	})
	.openapi("Unlock");

export const TestRunResponse = z
	.strictObject({
		timeZone: z.string().meta({
			description: "IANA time zone of the local times in this response: the site's, or UTC without a site.",
		}),
		startTime: localTime("Local time of the first row."),
		endTime: localTime("Local time of the last row."),
		durationMin: minutes("Time from the first row to the last."),
		startTemperatureC: celsius("Temperature of the water at the first row, mean of the thermometers."),
		endTemperatureC: celsius("Temperature of the water at the last row, mean of the thermometers."),
		heatCapacityKjPerK: kilojoulesPerKelvin(
			"Heat capacity of water and tank wall, midway between start and end temperature.",
		),
		deliveredKwh: kilowattHours("Heat stored in water and tank wall from the first row to the last."),
		meanPowerW: watts("Mean power stored in water and tank wall from the first row to the last."),
		meanPowerUncertaintyW: watts(
			"Half of the 95 % interval of `meanPowerW`, due to the thermometer's resolution.",
		),
		efficiency: ratio(
			"Mean power divided by the beam on the aperture. Absent without beam or dish.",
		).optional(),
		efficiencyUncertainty: ratio(
			"Half of the 95 % interval of `efficiency`, due to the thermometer's resolution. Absent where `efficiency` is.",
		).optional(),
		standardPower: z.discriminatedUnion("outcome", [StandardPowerLine, NoStandardPower]).meta({
			description: "Power to the water alone, standardised to 700 W/m² as in ASAE S580.",
		}),
		factors: z
			.strictObject({
				effectiveApertureM2: Factor.meta({
					description: "Aperture of a lossless dish that would deliver the same power to the water.",
				}),
				opticalFactor: Factor.meta({ description: "Effective aperture divided by the dish's aperture." }),
				lossWPerK: Factor.meta({
					description:
						"Heat loss coefficient of receiver, loop and tank while heating, per kelvin of water above air.",
				}),
				tankLossWPerK: Factor.meta({ description: "Heat loss coefficient of the tank at rest." }),
				collectorLossWPerK: Factor.meta({
					description: "Heat loss coefficient of receiver and loop: `lossWPerK` minus `tankLossWPerK`.",
				}),
				oilCapacityRateWPerK: Factor.meta({ description: "Heat capacity rate of the fluid in the loop." }),
				oilFlowLPerMin: Factor.meta({
					description: "Flow of the fluid in the loop that corresponds to `oilCapacityRateWPerK`.",
				}),
				loopLossWPerK: Factor.meta({
					description:
						"Heat loss coefficient of pipes and pump between receiver and tank, per kelvin of fluid above air.",
				}),
			})
			.openapi("RunFactors", {
				description:
					"Factors of the plant that the rows determine without a prediction, as seen from the water: a coil that transfers heat badly appears as an optical loss.",
			}),
		readingNoiseK: kelvinDifference(
			"Standard deviation of a reading about the fit, at least that of the thermometer's resolution. Absent without a fit.",
		).optional(),
		comparison: z
			.discriminatedUnion("outcome", [Compared, NotCompared])
			.meta({ description: "Comparison of the run with the prediction for the plant as described." }),
		unlocks: z
			.array(Unlock)
			.meta({ description: "Measurements that would determine what is undetermined in this response." }),
		advice: z.array(RunAdvice).meta({
			description:
				"Ways to determine more precisely the factors that this run determines to no better than a tenth. Empty where there are none, where nothing would narrow them by a fifth, or where water was drawn: such a run must be cut (caution `waterDrawn`).",
		}),
		series: Series,
		...backing,
		cautions: z.array(Caution).meta({
			description: "Cautions to observe: those for reading the run first, then those for the plant.",
		}),
	})
	.openapi("TestRunResponse");

export type TestRunResponse = z.input<typeof TestRunResponse>;
