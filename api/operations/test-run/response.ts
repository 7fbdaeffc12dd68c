import { z } from "@hono/zod-openapi";
import { Assumed } from "../../parts/assumed.ts";
import { Caution } from "../../parts/caution.ts";
import { Method } from "../../parts/method.ts";
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
				"`intervalTooWide` where half of the wider 95 % interval is more than half the single figure.",
		}),
		powerAt50KW: watts("The single figure: standardised power with the water 50 K above the air."),
		uncertaintyFromResolutionW: watts("Half of its 95 % interval, by the thermometer's resolution alone."),
		uncertaintyFromScatterW: watts("The same by the scatter of the intervals about the line."),
		interceptW: watts("Of the line, with the water at the air's temperature."),
		slopeWPerK: wattsPerKelvin("Of the line."),
		rSquared: ratio("Of the regression."),
		intervalsCounted: z.int().meta({ description: "Points of the line.", "x-unit": "1" }),
		intervalsLeftOut: z.int().meta({ description: "Intervals with less than 450 W/m².", "x-unit": "1" }),
		extrapolated: z.boolean().meta({ description: "Whether 50 K lies outside the points." }),
		asInStandard: z.boolean().meta({
			description:
				"Whether intervals, beam, air, water, number of points and r² are within what ASAE S580 asks (bounds from memory; its wind and load limits are not checked).",
		}),
	})
	.openapi("StandardPowerLine");

const NoStandardPower = z
	.strictObject({
		outcome: z.literal("undetermined"),
		reason: z.enum(["notMeasured", "tooFewIntervals", "noSpread"]).meta({
			description:
				"`notMeasured`: needs beam and air. `tooFewIntervals`: fewer than five of ten minutes with 450 W/m² or more. `noSpread`: the water's excess over the air moved less than 1 K.",
		}),
	})
	.openapi("NoStandardPower");

const Cause = z.enum(["optics", "losses", "tankLoss"]).meta({
	description:
		"`optics`: light that reaches the absorber. `losses`: heat that receiver and loop lose, and the tank where no rows at rest tell it apart. `tankLoss`: heat that the tank loses.",
});

const Share = z
	.strictObject({
		cause: Cause,
		ratio: Factor.meta({ description: "The plant as built over the plant as described." }),
		powerW: watts("What this alone adds to the mean power.").optional(),
		powerUncertaintyW: watts("Half of its 95 % interval.").optional(),
		differs: z.boolean().meta({ description: "Whether the interval of the ratio leaves out 1." }),
	})
	.openapi("GapShare");

const Compared = z
	.strictObject({
		outcome: z.literal("compared"),
		predictedMeanPowerW: watts("Kept by water and wall, as the plant described should have."),
		predictedEndTemperatureC: celsius("Of the water at the last row."),
		gapW: watts("Mean power measured less predicted."),
		gapUncertaintyW: watts("Half of its 95 % interval, by the thermometer alone."),
		endDifferenceK: kelvinDifference("At the last row, measured less predicted."),
		verdict: z.enum(["none", "explained", "undetermined"]).meta({
			description:
				"`explained` where the 95 % interval of at least one ratio leaves out 1; else `none` where the gap is within the thermometer's noise, else `undetermined`.",
		}),
		explainedBy: z
			.array(Cause)
			.meta({ description: "Causes whose ratio differs from 1, the weightiest first." }),
		causes: z.array(Share),
		unexplainedW: watts(
			"Of the gap, what the causes, each alone, leave over: their interplay, and what is none of them.",
		),
	})
	.openapi("RunCompared");

const NotCompared = z
	.strictObject({ outcome: z.literal("notCompared"), needs: z.array(Need) })
	.openapi("RunNotCompared");

const column = (field: z.ZodNumber) => z.array(field).meta(field.meta() ?? {});

const Series = z
	.strictObject({
		time: z.array(localTime("End of the interval.")),
		lengthMin: column(minutes("Of each interval: ten minutes, or what the rows make of it.")),
		waterTemperatureC: column(celsius("Mean over the interval.")),
		deliveredPowerW: column(watts("Kept by water and wall.")),
		powerUncertaintyW: column(watts("Half of its 95 % interval, by the thermometer's resolution.")),
		beamIrradianceWPerM2: column(wattsPerSquareMetre("Mean over the interval.")).optional(),
		ambientC: column(celsius("Mean over the interval.")).optional(),
		predictedTemperatureC: column(celsius("Of the water at the interval's end, where compared.")).optional(),
	})
	.openapi("TestRunSeries");

const Unlock = z
	.strictObject({
		need: Need,
		pointers: z.array(z.string()).meta({ description: "Fields of the request that bring it." }),
		factors: z.array(z.string()).meta({ description: "What it would tell, by names in this answer." }),
		message: z.string().meta({ description: "The same in English." }),
	})
	.openapi("Unlock");

export const TestRunResponse = z
	.strictObject({
		timeZone: z.string().meta({ description: "Zone of the local times: the site's, or UTC." }),
		startTime: localTime("First row."),
		endTime: localTime("Last row."),
		durationMin: minutes("From the first row to the last."),
		startTemperatureC: celsius("Of the water, mean of the thermometers."),
		endTemperatureC: celsius("Of the water, mean of the thermometers."),
		heatCapacityKjPerK: kilojoulesPerKelvin("Of water and tank wall, midway."),
		deliveredKwh: kilowattHours("Kept by water and wall from the first row to the last."),
		meanPowerW: watts("The same over the time."),
		meanPowerUncertaintyW: watts("Half of its 95 % interval, by the thermometer's resolution."),
		efficiency: ratio("Mean power over beam on the aperture. Absent without beam or dish.").optional(),
		efficiencyUncertainty: ratio("Half of its 95 % interval, by the thermometer's resolution.").optional(),
		standardPower: z.discriminatedUnion("outcome", [StandardPowerLine, NoStandardPower]).meta({
			description: "Power standardised to 700 W/m², of the water alone, as ASAE S580 has it.",
		}),
		factors: z
			.strictObject({
				effectiveApertureM2: Factor.meta({
					description: "Dish that would lose no light and give the water as much.",
				}),
				opticalFactor: Factor.meta({ description: "That over the dish's aperture." }),
				lossWPerK: Factor.meta({
					description: "Of receiver, loop and tank while heating, per kelvin of water over air.",
				}),
				tankLossWPerK: Factor.meta({ description: "Of the tank at rest." }),
				collectorLossWPerK: Factor.meta({ description: "Of receiver and loop: the difference of the two." }),
				oilCapacityRateWPerK: Factor.meta({ description: "Of the fluid in the loop." }),
				oilFlowLPerMin: Factor.meta({ description: "The same as flow of the loop's fluid." }),
				loopLossWPerK: Factor.meta({
					description: "Of pipes and pump between receiver and tank, per kelvin of fluid over air.",
				}),
			})
			.openapi("RunFactors", {
				description:
					"What the rows say of the plant by themselves, as the water sees it: a coil that takes the heat badly shows as light lost.",
			}),
		readingNoiseK: kelvinDifference(
			"Standard deviation of a reading about the fit, at least what the resolution brings. Absent without a fit.",
		).optional(),
		comparison: z.discriminatedUnion("outcome", [Compared, NotCompared]),
		unlocks: z.array(Unlock).meta({ description: "What would tell what is undetermined now." }),
		advice: z.array(RunAdvice).meta({
			description:
				"What would tell more closely the factors that this run tells to no better than a tenth, and how closely. Empty where none is so wide, where nothing would narrow it by a fifth, or where water was drawn: such a run is to be cut (`waterDrawn` among the cautions).",
		}),
		series: Series,
		cautions: z.array(Caution).meta({ description: "First of reading the run, then of the plant." }),
		assumed: z
			.array(Assumed)
			.meta({ description: "Every value that the request left out, and why this one." }),
		methods: z.array(Method).meta({ description: "What the numbers rest on." }),
	})
	.openapi("TestRunResponse");

export type TestRunResponse = z.input<typeof TestRunResponse>;
