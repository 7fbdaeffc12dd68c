import { z } from "@hono/zod-openapi";
import { type InstantSpreads as CoreSpreads, derived } from "../../../src/index.ts";
import { Spreads } from "../../parts/spread.ts";
import { INSTANT_INPUTS } from "../../parts/spread-names.ts";
import { assume } from "../../wire/defaults.ts";
import { ratio } from "../../wire/units.ts";

const {
	coilFilm: _coilFilm, // for a coil in a tank of water
	...shared
} = Spreads.shape;

/** Uncertain inputs of an instant heater, each as one standard deviation. */
export const InstantSpreads = z
	.strictObject({
		...shared,
		coilTransfer: assume(
			ratio(
				"Relative standard deviation of the conductance of the coil in the vessel's oil. 0.1 is a tenth of the value.",
				0,
				1,
			),
			0.2,
			derived("combined error of the correlations for the films inside and outside a coil in oil, ± 20 %"),
		),
	})
	.openapi("InstantSpreads", {
		description:
			"Uncertainty of each input of an instant heater's range, as one standard deviation. `laggingLoss` applies to the pipe to the tap, insulated or bare; `tankLoss` to the vessel's shell; `pumpFlow` to the oil pump; `coldWaterK` to the cold feed.",
	});

export type InstantSpreads = z.output<typeof InstantSpreads>;

export const INSTANT_SPREAD_NAMES = INSTANT_INPUTS.wire;

/** The spreads in the core's terms. */
export const coreInstantSpreads = (spreads: InstantSpreads): CoreSpreads => INSTANT_INPUTS.toCore(spreads);

/** The wire name of a core input. */
export const instantSpreadName = (input: string): keyof InstantSpreads => INSTANT_INPUTS.toWire(input);
