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
			more("Relative increase of the dish's aperture, at the same shape."),
			0.1,
			practice("a further ring or panel of mirror"),
		),
		reflectance: assume(
			ratio("Reflectance of a new mirror.", 0.05, 1),
			0.94,
			unconfirmed(measured("thin silvered glass", "NREL/TP-255-2091 (1983)")),
		),
		cleanliness: assume(
			ratio("Cleanliness of a mirror that is washed more often.", 0.05, 1),
			0.97,
			unconfirmed(practice("washed every week; 0.90–0.97 are usual")),
		),
		slopeError: assume(
			less("Relative reduction of the mirror's slope error."),
			0.3,
			practice("the worst petals aligned by their light spots"),
		),
		receiverAperture: assume(
			less("Largest relative change of the receiver's aperture diameter towards the best one."),
			0.15,
			practice("a ring in front of the opening, or a wider opening"),
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
			ratio("Transmittance for sunlight of a pane added in front of an open coil.", 0.05, 1),
			0.9,
			practice("4 mm of low-iron glass"),
		),
		coverGapMm: assume(
			millimetres("Gap between the added pane and the coil.", 2, 200),
			25,
			practice("wide enough to keep the pane cool, narrow enough to keep the air still"),
		),
		supplyLaggingMm: assume(
			millimetres("Insulation thickness added to the supply pipe.", 0.1, 100),
			20,
			practice("the next thicker shell on the market"),
		),
		returnLaggingMm: assume(
			millimetres("Insulation thickness added to the return pipe.", 0.1, 100),
			20,
			practice("the next thicker shell on the market"),
		),
		pumpLagging: assume(
			less("Relative reduction of the heat loss of the pump's casing."),
			0.67,
			practice("a foam shell leaves a third of a bare casing's loss"),
		),
		tankLaggingMm: assume(
			millimetres("Insulation thickness added to the tank.", 0.1, 300),
			50,
			practice("a further mat or jacket"),
		),
		wetFraction: assume(
			ratio(
				"Volume fraction of water in insulation exposed to rain: the state that dry insulation is compared with.",
				0.001,
				0.15,
			),
			0.05,
			practice("outdoor insulation after a wet season without a cover"),
		),
		flow: assume(more("Relative increase of the pump's flow."), 0.25, practice("the pump's next speed")),
		coilLength: assume(
			more("Relative increase of the coil's length, as far as the tank has room."),
			0.25,
			practice("a few more turns"),
		),
		pipeLength: assume(
			less("Relative reduction of the length of both supply and return pipe."),
			0.25,
			practice("dish and tank slightly closer together"),
		),
	})
	.openapi("ImprovementSteps", {
		description: "Size of one step of each improvement.",
	});

type Steps = z.output<typeof Steps>;

/** @param pump  an insulated casing without a stated loss has nothing left to insulate */
export function coreSteps(steps: Steps, pump: Loop["pump"]): CoreSteps {
	const insulated = pump.insulated && pump.casingLossWPerK === undefined;
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
		pumpLagging: insulated ? 0 : steps.pumpLagging,
		tankLagging: toSi.millimetres(steps.tankLaggingMm),
		dryLagging: steps.wetFraction,
		flow: steps.flow,
		coilLength: steps.coilLength,
		shorterPipes: steps.pipeLength,
	};
}
