import { type Insulation, insulationConductivity, insulationMaterial } from "../heat/insulation.ts";
import type { Pipe } from "./loop.ts";
import { criticalRadius, insulationResistance, pipeHeatLoss, shellResistance } from "./pipe.ts";
import type { PipeRun, RunConditions } from "./pipe-run.ts";

/** The changes to the lagging whose effect is asked for. */
export interface LaggingQuestions {
	readonly addedThicknesses: readonly number[]; // on both pipes, rising [m]
	readonly moisture: number; // water by volume once it is wet
	readonly coverEmittance: number; // of a weatherproof cover's outside, 0–1
}

/** What a pipe loses under other lagging, against what it loses as laid [W, of the whole length]. */
export interface LaggingAnswers {
	readonly thicker: readonly Thicker[];
	readonly dry: number; // with dry lagging
	readonly wet: number; // with wet lagging
	readonly covered: number; // with a cover: dry, and the cover's own skin
	readonly uncovered: number; // without one, in rain: wet, and the skin washed down to the air's temperature
	readonly criticalRadius: number; // [m]
	readonly firstMillimetre: number; // what the first millimetre of lagging saves a bare metre; below 0 it costs [W/m]
}

export interface Thicker {
	readonly addedThickness: number; // [m]
	readonly heatLoss: number; // [W]
	readonly saved: number; // against as laid [W]
	readonly further: number; // against the step before [W]
}

const FIRST = 0.001; // [m]

/** Heat that a metre loses while rain keeps its skin at the temperature of the air: film inside, wall and lagging alone
 *  stand in the way [W/m]. A limit that no weather passes: rain colder than the air is left out, as is the heat that
 *  vapour carries through wet open-cell lagging.
 *  @param insideFilm  [W/m²K]     Check  conduction alone, tests/reference/cold-start.reference.ts */
export function washedHeatLoss(
	pipe: Pipe,
	insideFilm: number,
	fluidTemperature: number,
	ambient: number,
): number {
	const before =
		1 / (Math.PI * pipe.innerDiameter * insideFilm) +
		shellResistance(pipe.innerDiameter, pipe.outerDiameter, pipe.wallConductivity);
	return (
		(fluidTemperature - ambient) / (before + insulationResistance(pipe, before, fluidTemperature, ambient))
	);
}

function relagged(pipe: Pipe, changes: Partial<Insulation>): Pipe {
	return { ...pipe, insulation: { ...pipe.insulation, ...changes } };
}

/** Critical radius of a pipe's lagging with the film on its skin as laid [m]. */
function criticalRadiusAsLaid(pipe: Pipe, { loss, meanTemperature }: PipeRun): number {
	const { material, moisture, thickness } = pipe.insulation;
	const diameter = pipe.outerDiameter + 2 * thickness;
	const film = 1 / (Math.PI * diameter * loss.outsideResistance);
	const conductivity =
		thickness > 0
			? shellResistance(pipe.outerDiameter, diameter, 1) / loss.insulationResistance
			: insulationConductivity(
					insulationMaterial(material),
					(meanTemperature + loss.surfaceTemperature) / 2,
					moisture,
				);
	return criticalRadius(conductivity, film);
}

/** Answers to what lagging changes.
 *  @param run       the pipe as laid     @param conditions  the same as of the run
 *  @param lossWith  loss of the whole length of a pipe laid otherwise [W] */
export function laggingAnswers(
	pipe: Pipe,
	run: PipeRun,
	conditions: RunConditions,
	questions: LaggingQuestions,
	lossWith: (pipe: Pipe) => number,
): LaggingAnswers {
	const { thickness } = pipe.insulation;
	let before = run.heatLoss;
	const thicker = questions.addedThicknesses.map((addedThickness) => {
		const heatLoss = lossWith(relagged(pipe, { thickness: thickness + addedThickness }));
		const further = before - heatLoss;
		before = heatLoss;
		return { addedThickness, heatLoss, saved: run.heatLoss - heatLoss, further };
	});
	const wet = relagged(pipe, { moisture: questions.moisture });
	const metre = { ...conditions, fluidTemperature: run.meanTemperature, insideFilm: run.insideFilm };
	const lossOfMetre = (lagging: number) =>
		pipeHeatLoss(relagged(pipe, { thickness: lagging }), metre).perMetre;
	return {
		thicker,
		dry: lossWith(relagged(pipe, { moisture: 0 })),
		wet: lossWith(wet),
		covered: lossWith(relagged(pipe, { moisture: 0, surfaceEmittance: questions.coverEmittance })),
		uncovered: washedHeatLoss(wet, run.insideFilm, run.meanTemperature, conditions.ambient) * pipe.length,
		criticalRadius: criticalRadiusAsLaid(pipe, run),
		firstMillimetre: lossOfMetre(0) - lossOfMetre(FIRST),
	};
}
