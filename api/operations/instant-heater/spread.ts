import { z } from "@hono/zod-openapi";
import { type InstantSpreads as CoreSpreads, derived } from "../../../src/index.ts";
import { Spreads } from "../../parts/spread.ts";
import { INSTANT_INPUTS } from "../../parts/spread-names.ts";
import { assume } from "../../wire/defaults.ts";
import { ratio } from "../../wire/units.ts";

const {
	coilFilm: _coilFilm, // of a coil in a tank of water
	...shared
} = Spreads.shape;

/** What is not known exactly about an instant heater, each by one standard deviation. */
export const InstantSpreads = z
	.strictObject({
		...shared,
		coilTransfer: assume(
			ratio(
				"Conductance of the coil in the vessel's oil. Standard deviation, relative: 0.1 is a tenth of the value.",
				0,
				1,
			),
			0.2,
			derived("films inside and outside a coil in oil; the error of the correlations used, ± 20 % together"),
		),
	})
	.openapi("InstantSpreads", {
		description:
			"How well each input of an instant heater's range is known: one standard deviation either way. `laggingLoss` is of the pipe to the tap, lagged or bare, `tankLoss` of the vessel's shell, `pumpFlow` of the oil's pump, `coldWaterK` of the feed.",
	});

export type InstantSpreads = z.output<typeof InstantSpreads>;

export const INSTANT_SPREAD_NAMES = INSTANT_INPUTS.wire;

/** The spreads as the core wants them. */
export const coreInstantSpreads = (spreads: InstantSpreads): CoreSpreads => INSTANT_INPUTS.toCore(spreads);

/** The wire's name of one of the core's inputs. */
export const instantSpreadName = (input: string): keyof InstantSpreads => INSTANT_INPUTS.toWire(input);
