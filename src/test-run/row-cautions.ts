import type { Caution } from "../cautions/caution.ts";
import type { TestRun } from "./run.ts";
import { runningSpans } from "./running.ts";
import { seenStep } from "./seen-step.ts";
import { drawnFrom } from "./sudden-falls.ts";

/** What to know of the rows themselves before anything is read off them.
 *  @param noise  of a reading about the fit [K]; NaN without one */
export function rowCautions(run: TestRun, noise: number): readonly Caution[] {
	return [...drawnWater(run, noise), ...sparseBeam(run), ...coarseReadings(run)];
}

function drawnWater(run: TestRun, noise: number): Caution[] {
	const falls = drawnFrom(run, noise);
	const [worst] = falls;
	if (worst === undefined) return [];
	const rows = falls.toSorted((a, b) => a.from - b.from).map(({ from, to }) => `${from} to ${to}`);
	return [
		{
			code: "waterDrawn",
			severity: "warning",
			parameters: { rows: rows.join(", "), fall: { kind: "difference", value: worst.fall } },
			message:
				"In rows {rows} the water grew colder by up to {fall}, faster than a tank loses heat: water was drawn or let in, or a layered tank was stirred. Nothing here counts that, so power and efficiency come out too low and the factors loose. Send the rows before and after as runs of their own.",
		},
	];
}

const SPARSE = 900; // [s] between readings of the sun; ASAE S580 asks for means of ten minutes at most

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
				"The beam was read up to {apart} apart, and a straight line stands for it between: no cloud and no noon is seen there. Efficiency and all that rests on the beam can be off by far more than their half-widths say.",
		},
	];
}

function coarseReadings(run: TestRun): Caution[] {
	const step = seenStep(run);
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
				"All readings of the tank are whole steps of {step}, but its thermometer is taken to show {given}: the half-widths that rest on the thermometer alone are too narrow. Send its step.",
		},
	];
}
