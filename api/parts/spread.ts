import { z } from "@hono/zod-openapi";
import { type DaySpreads, handbook, measured, practice, standard, unconfirmed } from "../../src/index.ts";
import { assume } from "../wire/defaults.ts";
import { kelvinDifference, ratio } from "../wire/units.ts";
import { DAY_INPUTS } from "./spread-names.ts";

const share = (description: string) => ratio(`Standard deviation of ${description}.`, 0, 0.2);
const relative = (description: string) =>
	ratio(`Relative standard deviation of ${description}; 0.1 is a tenth of the value.`, 0, 1);

/** Uncertainty of a day's inputs, each as one standard deviation; 0 means known exactly. */
export const Spreads = z
	.strictObject({
		linkeTurbidity: assume(
			ratio("Standard deviation of the Linke turbidity of a clear sky.", 0, 3),
			0.7,
			measured(
				"how well turbidity is known at most places",
				"Remund et al., ISES Solar World Congress, Göteborg 2003",
			),
		),
		measuredIrradiance: assume(
			relative("the irradiance of a measured sky"),
			0.03,
			unconfirmed(
				standard(
					"daily sums of a first-class pyranometer in the field: within 5 % at 95 % confidence",
					"ISO 9060; WMO-No. 8",
				),
			),
		),
		reflectance: assume(
			share("the mirror's reflectance"),
			0.02,
			unconfirmed(
				measured(
					"differences between batches of a mirror material, and its ageing",
					"NREL/TP-255-2091 (1983)",
				),
			),
		),
		cleanliness: assume(
			share("the mirror's cleanliness"),
			0.03,
			unconfirmed(practice("cleanliness is 0.90 to 0.97 between two washings")),
		),
		slopeError: assume(
			relative("the mirror's slope error"),
			0.3,
			practice("seldom measured, mostly judged from the focal spot"),
		),
		absorptance: assume(
			share("the receiver's absorptance"),
			0.02,
			unconfirmed(
				handbook("black paint, 0.92–0.97", "Duffie & Beckman, Solar Engineering of Thermal Processes, ch. 4"),
			),
		),
		opticalEfficiency: assume(
			share("the optical efficiency of an efficiency line"),
			0.03,
			practice("an outdoor test with its beam within 2 % and its flow within 1 %"),
		),
		lossCoefficient: assume(
			relative("the heat loss coefficient of an efficiency line"),
			0.15,
			practice("the slope of a measured line is less certain than its intercept"),
		),
		receiverConvection: assume(
			relative("the receiver's heat loss to wind and air"),
			0.25,
			unconfirmed(
				measured(
					"differences between published cavity correlations, larger in wind",
					"Leibfried & Ortjohann, J. Sol. Energy Eng. 117 (1995) 75",
				),
			),
		),
		coilFilm: assume(
			relative("the film coefficient inside the coil"),
			0.32,
			measured(
				"published formulas for oil in a helix differ by −40 to +70 %, used as 5 and 95 % limits",
				"Schmidt 1967; Janssen & Hoogendoorn 1978; Manlapaz & Churchill 1981",
			),
		),
		laggingLoss: assume(
			relative("the heat loss through the insulation of pipes and receiver"),
			0.2,
			practice("8 % between products of one kind; the rest is gaps, joints and supports"),
		),
		tankLoss: assume(
			relative("the heat loss through the tank's shell"),
			0.2,
			practice("connections and feet bridge the insulation"),
		),
		pumpFlow: assume(
			relative("the pump's flow rate"),
			0.1,
			practice("a small gear pump moves cold and hot oil at different rates"),
		),
		ambientK: assume(
			kelvinDifference("Standard deviation of the air temperature, all day.", 0, 15),
			1.5,
			practice("differences between the nearest weather station and the roof"),
		),
		wind: assume(relative("the wind speed at the plant"), 0.4, practice("shelter differs from roof to roof")),
		coldWaterK: assume(
			kelvinDifference(
				"Standard deviation of the mains temperature, and of the tank filled from the mains.",
				0,
				10,
			),
			1,
			practice("a day's mains temperature against the month's mean"),
		),
	})
	.openapi("Spreads", {
		description:
			"Uncertainty of each input of a range, as one standard deviation. Two plants in three are within it. 0 means known exactly.",
	});

export type Spreads = z.output<typeof Spreads>;

export const SPREAD_NAMES = DAY_INPUTS.wire;

/** The spreads for the core. */
export const coreSpreads = (spreads: Spreads): DaySpreads => DAY_INPUTS.toCore(spreads);

/** The wire's name of one of the core's inputs. */
export const spreadName = (input: string): keyof Spreads => DAY_INPUTS.toWire(input);
