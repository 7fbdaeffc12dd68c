import { z } from "@hono/zod-openapi";
import { type Steps as CoreSteps, handbook, measured, practice, unconfirmed } from "../../../src/index.ts";
import type { Loop } from "../../parts/loop.ts";
import { assume } from "../../wire/defaults.ts";
import { millimetres, ratio, toSi } from "../../wire/units.ts";

const more = (description: string) => ratio(`${description} 0.25 is a quarter more.`, 0.0001, 1);
const less = (description: string) => ratio(`${description} 0.25 is a quarter less.`, 0.0001, 0.9);

export const Steps = z
	.strictObject({
		aperture: assume(
			more("More aperture, of the same shape."),
			0.1,
			practice("a further ring or panel of mirror"),
		),
		reflectance: assume(
			ratio("Reflectance of a new mirror.", 0.05, 1),
			0.94,
			unconfirmed(measured("thin silvered glass", "NREL/TP-255-2091 (1983)")),
		),
		cleanliness: assume(
			ratio("What washing more often keeps of the reflectance.", 0.05, 1),
			0.97,
			unconfirmed(practice("washed every week; 0.90–0.97 are usual")),
		),
		slopeError: assume(less("Less slope error."), 0.3, practice("the worst petals set right by their spots")),
		receiverAperture: assume(
			less("How far the receiver's opening may go towards the best one, as a share of its diameter."),
			0.15,
			practice("a ring before the opening, or a hole cut wider"),
		),
		emittance: assume(
			ratio("Emittance of a selective coating.", 0.02, 1),
			0.12,
			unconfirmed(
				handbook(
					"black chrome, 0.09–0.12",
					"Duffie & Beckman, Solar Engineering of Thermal Processes, ch. 4",
				),
			),
		),
		coverTransmittance: assume(
			ratio("Share of sunlight that a pane before a bare spiral lets through.", 0.05, 1),
			0.9,
			practice("4 mm of low-iron glass"),
		),
		coverGapMm: assume(
			millimetres("Between pane and spiral.", 2, 200),
			25,
			practice("wide enough for the pane to stay cool, narrow enough to hold the air still"),
		),
		supplyLaggingMm: assume(
			millimetres("More lagging on the supply pipe.", 0.1, 100),
			20,
			practice("the next shell sold"),
		),
		returnLaggingMm: assume(
			millimetres("More lagging on the return pipe.", 0.1, 100),
			20,
			practice("the next shell sold"),
		),
		pumpLagging: assume(
			less("Less heat loss of the pump's casing."),
			0.67,
			practice("a foam shell leaves a third of a bare casing's loss"),
		),
		tankLaggingMm: assume(
			millimetres("More lagging on the tank.", 0.1, 300),
			50,
			practice("a further mat or jacket"),
		),
		wetFraction: assume(
			ratio(
				"Water in lagging that rain gets into, by volume: what keeping it dry is held against.",
				0.001,
				0.15,
			),
			0.05,
			practice("lagging out of doors after a wet season without a cover"),
		),
		flow: assume(more("More flow."), 0.25, practice("the pump's next speed")),
		coilLength: assume(more("More coil, as far as the tank has room."), 0.25, practice("a few turns more")),
		pipeLength: assume(
			less("Less pipe, supply and return alike."),
			0.25,
			practice("dish and tank a little nearer"),
		),
	})
	.openapi("ImprovementSteps", {
		description: "How far a builder goes with each improvement, in one step.",
	});

type Steps = z.output<typeof Steps>;

/** @param pump  a casing that is lagged, and whose loss nobody gave, has nothing left to lag */
export function coreSteps(steps: Steps, pump: Loop["pump"]): CoreSteps {
	const lagged = pump.insulated && pump.casingLossWPerK === undefined;
	return {
		aperture: steps.aperture,
		reflectance: steps.reflectance,
		cleaning: steps.cleanliness,
		slopeError: steps.slopeError,
		receiverAperture: steps.receiverAperture,
		selectiveCoating: steps.emittance,
		glazing: { transmittance: steps.coverTransmittance, gap: toSi.millimetres(steps.coverGapMm) },
		supplyLagging: toSi.millimetres(steps.supplyLaggingMm),
		returnLagging: toSi.millimetres(steps.returnLaggingMm),
		pumpLagging: lagged ? 0 : steps.pumpLagging,
		tankLagging: toSi.millimetres(steps.tankLaggingMm),
		dryLagging: steps.wetFraction,
		flow: steps.flow,
		coilLength: steps.coilLength,
		shorterPipes: steps.pipeLength,
	};
}
