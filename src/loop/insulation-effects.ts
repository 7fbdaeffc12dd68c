import { type Insulation, insulationConductivity, insulationMaterial } from "../heat/insulation.ts";
import type { Pipe } from "./loop.ts";
import { criticalRadius, insulationResistance, pipeHeatLoss, shellResistance } from "./pipe.ts";
import type { PipeRun, RunConditions } from "./pipe-run.ts";

/** Changes of the insulation to evaluate. */
export interface InsulationQuestions {
	readonly addedThicknesses: readonly number[]; // on both pipes, increasing [m]
	readonly moisture: number; // water by volume of wet insulation
	readonly coverEmittance: number; // of the outside of a weatherproof cover, 0–1
}

/** Heat loss of a pipe with other insulation [W, complete length]. */
export interface InsulationEffects {
	readonly thicker: readonly Thicker[];
	readonly dry: number; // with dry insulation
	readonly wet: number; // with wet insulation
	readonly covered: number; // with a cover: dry, with the emittance of the cover
	readonly uncovered: number; // without a cover in rain: wet, with the surface at air temperature
	readonly criticalRadius: number; // [m]
	readonly firstMillimetre: number; // saving per metre by the first millimetre of insulation on a bare pipe; negative where the loss increases [W/m]
}

export interface Thicker {
	readonly addedThickness: number; // [m]
	readonly heatLoss: number; // [W]
	readonly saved: number; // compared with the pipe as built [W]
	readonly further: number; // compared with the previous step [W]
}

const FIRST = 0.001; // [m]

/** Heat loss per metre while rain keeps the surface at air temperature: only inside film, wall and insulation resist
 *  [W/m]. An upper limit for any weather, except that rain colder than the air is neglected, and so is the heat that
 *  vapour carries through wet open-cell insulation.
 *  @param insideFilm  [W/m²K]     Check  conduction alone, tests/reference/cold-start.reference.ts */
export function rainHeatLoss(
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

function withInsulation(pipe: Pipe, changes: Partial<Insulation>): Pipe {
	return { ...pipe, insulation: { ...pipe.insulation, ...changes } };
}

/** Critical radius of a pipe's insulation with the present film on its surface [m]. */
function presentCriticalRadius(pipe: Pipe, { loss, meanTemperature }: PipeRun): number {
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

/** Effects of changed insulation.
 *  @param run       the pipe as built     @param conditions  those of the run
 *  @param lossWith  heat loss of the complete length of a changed pipe [W] */
export function insulationEffects(
	pipe: Pipe,
	run: PipeRun,
	conditions: RunConditions,
	questions: InsulationQuestions,
	lossWith: (pipe: Pipe) => number,
): InsulationEffects {
	const { thickness } = pipe.insulation;
	let previous = run.heatLoss;
	const thicker = questions.addedThicknesses.map((addedThickness) => {
		const heatLoss = lossWith(withInsulation(pipe, { thickness: thickness + addedThickness }));
		const further = previous - heatLoss;
		previous = heatLoss;
		return { addedThickness, heatLoss, saved: run.heatLoss - heatLoss, further };
	});
	const wet = withInsulation(pipe, { moisture: questions.moisture });
	const metre = { ...conditions, fluidTemperature: run.meanTemperature, insideFilm: run.insideFilm };
	const lossOfMetre = (insulation: number) =>
		pipeHeatLoss(withInsulation(pipe, { thickness: insulation }), metre).perMetre;
	return {
		thicker,
		dry: lossWith(withInsulation(pipe, { moisture: 0 })),
		wet: lossWith(wet),
		covered: lossWith(withInsulation(pipe, { moisture: 0, surfaceEmittance: questions.coverEmittance })),
		uncovered: rainHeatLoss(wet, run.insideFilm, run.meanTemperature, conditions.ambient) * pipe.length,
		criticalRadius: presentCriticalRadius(pipe, run),
		firstMillimetre: lossOfMetre(0) - lossOfMetre(FIRST),
	};
}
