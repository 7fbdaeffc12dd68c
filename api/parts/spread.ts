import { z } from "@hono/zod-openapi";
import { type DaySpreads, handbook, measured, practice, standard, unconfirmed } from "../../src/index.ts";
import { assume } from "../wire/defaults.ts";
import { kelvinDifference, ratio } from "../wire/units.ts";
import { DAY_INPUTS } from "./spread-names.ts";

const share = (description: string) => ratio(`${description} Standard deviation.`, 0, 0.2);
const relative = (description: string) =>
	ratio(`${description} Standard deviation, relative: 0.1 is a tenth of the value.`, 0, 1);

/** What is not known exactly about a day, each by one standard deviation; 0 takes an input as known. */
export const Spreads = z
	.strictObject({
		linkeTurbidity: assume(
			ratio("Haze of a clear sky, as Linke turbidity. Standard deviation.", 0, 3),
			0.7,
			measured(
				"how well it is known of most places",
				"Remund et al., ISES Solar World Congress, Göteborg 2003",
			),
		),
		measuredIrradiance: assume(
			relative("Of a measured sky's irradiance."),
			0.03,
			unconfirmed(
				standard(
					"a first-class pyranometer in the field, daily sums within 5 % at 95 %",
					"ISO 9060; WMO-No. 8",
				),
			),
		),
		reflectance: assume(
			share("Of the mirror."),
			0.02,
			unconfirmed(
				measured("between lots of one mirror material, and with its age", "NREL/TP-255-2091 (1983)"),
			),
		),
		cleanliness: assume(
			share("Of the mirror."),
			0.03,
			unconfirmed(practice("0.90 to 0.97 between two washings")),
		),
		slopeError: assume(
			relative("Of the mirror's surface."),
			0.3,
			practice("seldom measured, mostly judged from the spot"),
		),
		absorptance: assume(
			share("Of the receiver's surface."),
			0.02,
			unconfirmed(
				handbook("black paint, 0.92–0.97", "Duffie & Beckman, Solar Engineering of Thermal Processes, ch. 4"),
			),
		),
		opticalEfficiency: assume(
			share("Of an efficiency line."),
			0.03,
			practice("a test out of doors, its beam within 2 % and its flow within 1 %"),
		),
		lossCoefficient: assume(
			relative("Of an efficiency line."),
			0.15,
			practice("the slope of a test line is known less well than its start"),
		),
		receiverConvection: assume(
			relative("Heat that wind and air take from the receiver."),
			0.25,
			unconfirmed(
				measured(
					"how far published cavity correlations lie apart, and more in wind",
					"Leibfried & Ortjohann, J. Sol. Energy Eng. 117 (1995) 75",
				),
			),
		),
		coilFilm: assume(
			relative("Film coefficient inside the coil."),
			0.32,
			measured(
				"published formulas for oil in a helix lie from −40 to +70 % of one another, taken as 5 and 95 %",
				"Schmidt 1967; Janssen & Hoogendoorn 1978; Manlapaz & Churchill 1981",
			),
		),
		laggingLoss: assume(
			relative("Heat through the lagging of pipes and receiver."),
			0.2,
			practice("8 % among products of one kind, the rest gaps, joints and supports"),
		),
		tankLoss: assume(
			relative("Heat through the tank's shell."),
			0.2,
			practice("connections and feet bridge the lagging"),
		),
		pumpFlow: assume(
			relative("Flow of the pump."),
			0.1,
			practice("cold and hot oil pass a small gear pump unlike"),
		),
		ambientK: assume(
			kelvinDifference("Air, all day. Standard deviation.", 0, 15),
			1.5,
			practice("from the nearest station to the roof"),
		),
		wind: assume(relative("Wind at the plant."), 0.4, practice("shelter differs from roof to roof")),
		coldWaterK: assume(
			kelvinDifference("Of the mains, and of the tank filled from it. Standard deviation.", 0, 10),
			1,
			practice("a day's mains against the month's mean"),
		),
	})
	.openapi("Spreads", {
		description:
			"How well each input of a range is known: one standard deviation either way; two plants in three lie within it. 0 takes it as known exactly.",
	});

export type Spreads = z.output<typeof Spreads>;

export const SPREAD_NAMES = DAY_INPUTS.wire;

/** The spreads as the core wants them. */
export const coreSpreads = (spreads: Spreads): DaySpreads => DAY_INPUTS.toCore(spreads);

/** The wire's name of one of the core's inputs. */
export const spreadName = (input: string): keyof Spreads => DAY_INPUTS.toWire(input);
