import { z } from "@hono/zod-openapi";
import type { InstantSpreads as CoreSpreads } from "../../src/index.ts";
import { assume } from "../assumed.ts";
import { ratio } from "../units.ts";
import { Spreads } from "./spread.ts";

const {
	coilFilm: _coilFilm, // of a coil in a tank of water
	laggingLoss: _laggingLoss, // an instant heater is reckoned without pipes
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
			"films inside and outside a coil in oil; the error of the correlations used, ± 20 % together",
		),
	})
	.openapi("InstantSpreads", {
		description:
			"How well each input of an instant heater's range is known: one standard deviation either way. `tankLoss` is of the vessel's shell, `pumpFlow` of the oil's pump, `coldWaterK` of the feed.",
	});

export type InstantSpreads = z.output<typeof InstantSpreads>;

/** Core's name of each input, by the wire's. */
const NAMES = {
	linkeTurbidity: "turbidity",
	measuredIrradiance: "measuredBeam",
	reflectance: "reflectance",
	cleanliness: "cleanliness",
	slopeError: "slopeError",
	absorptance: "absorptance",
	opticalEfficiency: "opticalEfficiency",
	lossCoefficient: "lossCoefficient",
	receiverConvection: "receiverConvection",
	coilTransfer: "coilTransfer",
	tankLoss: "tankLoss",
	pumpFlow: "pumpFlow",
	ambientK: "ambient",
	wind: "wind",
	coldWaterK: "coldWater",
} as const satisfies Record<keyof InstantSpreads, keyof CoreSpreads>;

export const INSTANT_SPREAD_NAMES = Object.keys(NAMES) as [keyof InstantSpreads, ...(keyof InstantSpreads)[]];

/** The spreads as the core wants them. Every one of them is the same number on both sides. */
export function coreInstantSpreads(spreads: InstantSpreads): CoreSpreads {
	return Object.fromEntries(
		INSTANT_SPREAD_NAMES.map((name) => [NAMES[name], spreads[name]]),
	) as unknown as CoreSpreads;
}

/** The wire's name of one of the core's inputs. */
export function instantSpreadName(input: string): keyof InstantSpreads {
	return INSTANT_SPREAD_NAMES.find((name) => NAMES[name] === input)!;
}
