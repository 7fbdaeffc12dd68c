import type { Build, Caution } from "../cautions/caution.ts";
import { DomainError } from "../errors.ts";
import type { Method } from "../methods.ts";
import type { Plant } from "../plant/plant.ts";
import { boilingPoint, standardPressure } from "../sky/atmosphere.ts";
import { AS_DRAWN } from "./as-built-plant.ts";
import { runCautions } from "./cautions.ts";
import { type Delivered, delivered } from "./delivered.ts";
import { type Factors, runFactors } from "./factors.ts";
import { explainedGap, type Gap } from "./gap.ts";
import { type Interval, runIntervals } from "./intervals.ts";
import { testRunMethods } from "./methods.ts";
import { type PredictedRun, predictedRun, type RunSky } from "./predicted-run.ts";
import { rowFaults } from "./row-faults.ts";
import type { TestRun } from "./run.ts";
import { type StandardLine, standardLine } from "./standardised-power.ts";

/** A plant to compare with a run, and the sky of the run. */
export interface Drawing {
	readonly plant: Plant; // its tank is that of the run
	readonly build: Build;
	readonly sky: RunSky;
}

/** Results of a measured run. */
export interface TestRunReport {
	readonly delivered: Delivered;
	readonly intervals: readonly Interval[];
	readonly standard: StandardLine;
	readonly factors: Factors;
	readonly prediction: PredictedRun | undefined;
	readonly gap: Gap | undefined; // with a prediction
	readonly cautions: readonly Caution[];
	readonly methods: readonly Method[];
}

/** Delivered heat of a measured run, factors of its plant, and its difference from the drawing.
 *  @param drawing    plant to compare with, or undefined
 *  @param elevation  elevation of the plant [m]
 *  Errors  contradictory: a bad row, see `rowFaults` */
export function testRunReport(run: TestRun, drawing: Drawing | undefined, elevation: number): TestRunReport {
	requireConsistent(run, elevation);
	const gained = delivered(run);
	const intervals = runIntervals(run);
	const standard = standardLine(run, intervals);
	const prediction = drawing && predictedRun(drawing.plant, AS_DRAWN, run, drawing.sky);
	const gap = drawing && prediction && explainedGap(drawing.plant, run, prediction.run, drawing.sky);
	const factors = runFactors(run);
	return {
		delivered: gained,
		intervals,
		standard,
		factors,
		prediction,
		gap,
		cautions: runCautions(run, { factors, gap }, gained, drawing, prediction),
		methods: testRunMethods(standard, prediction),
	};
}

function requireConsistent(run: TestRun, elevation: number): void {
	if (!(run.time.length >= 2))
		throw new DomainError("contradictory", "run.rows", "a run needs at least two rows", {
			rows: run.time.length,
		});
	const rows = run.time.length;
	for (const column of [...run.thermometers, run.beam, run.ambient, run.wind, run.oilIn, run.oilOut])
		if (column && !(column.length === rows && Array.from(column).every(Number.isFinite)))
			throw new DomainError("contradictory", "run.rows", "each column of a run needs one number per row", {
				rows,
			});
	const [fault] = rowFaults(run, boilingPoint(standardPressure(elevation) + run.tank.reliefPressure));
	if (fault)
		throw new DomainError(
			"contradictory",
			"run.rows",
			`row ${fault.row} of the run is invalid: ${fault.kind}`,
			{
				row: fault.row,
				kind: fault.kind,
			},
		);
}
