import type { Caution } from "../cautions/caution.ts";
import { observedStep } from "./observed-step.ts";
import type { TestRun } from "./run.ts";
import { runningSpans } from "./running.ts";
import { suddenFalls } from "./sudden-falls.ts";

/** Cautions about the rows of a run.
 *  @param noise  of a reading about the fit [K]; NaN without one */
export function rowCautions(run: TestRun, noise: number): readonly Caution[] {
	return [...drawnWater(run, noise), ...sparseBeam(run), ...coarseReadings(run)];
}

function drawnWater(run: TestRun, noise: number): Caution[] {
	const falls = suddenFalls(run, noise);
	const [worst] = falls;
	if (worst === undefined) return [];
	const rows = falls.toSorted((a, b) => a.from - b.from).map(({ from, to }) => `${from} to ${to}`);
	return [
		{
			code: "waterDrawn",
			severity: "warning",
			parameters: { rows: rows.join(", "), fall: { kind: "difference", value: worst.fall } },
			message:
				"In rows {rows} the water temperature fell by up to {fall}, faster than a tank loses heat: water was drawn or added, or a stratified tank was stirred. The evaluation neglects that, so power and efficiency are too low and the factors imprecise. Send the rows before and after as separate runs.",
		},
	];
}

const SPARSE = 900; // [s] between readings of the sun; ASAE S580 requires means of at most ten minutes

function sparseBeam(run: TestRun): Caution[] {
	const { beam, time } = run;
	if (beam === undefined) return [];
	const widest = runningSpans(run).reduce(
		(most, runs, i) => (runs ? Math.max(most, time[i + 1]! - time[i]!) : most),
		0,
	);
	if (widest <= SPARSE) return [];
	return [
		{
			code: "sparseBeam",
			severity: "warning",
			parameters: { apart: { kind: "duration", value: widest } },
			message:
				"The beam was read up to {apart} apart, with linear interpolation between readings, which misses clouds and noon. Efficiency and all results from the beam can be wrong by far more than their half-widths.",
		},
	];
}

function coarseReadings(run: TestRun): Caution[] {
	const step = observedStep(run);
	if (step === undefined) return [];
	return [
		{
			code: "coarseReadings",
			severity: "info",
			parameters: {
				step: { kind: "difference", value: step },
				given: { kind: "difference", value: run.resolution },
			},
			message:
				"All readings of the tank are multiples of {step}, but the resolution of its thermometer is {given}: half-widths from the resolution alone are too narrow. Send the real resolution.",
		},
	];
}
