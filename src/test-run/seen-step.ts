import { ICE_POINT } from "../constants.ts";
import type { TestRun } from "./run.ts";

const STEPS = [5, 2, 1, 0.5, 0.25, 0.2]; // [K] of the thermometers of the trade
const LEAST_VALUES = 10; // different readings; finer ones that all fall on steps of 0.2 K by chance are one case in a thousand
const ROUND_OFF = 1e-6; // of a step

/** The step in which a run's readings go, where it is coarser than the run says [K]; else undefined. */
export function seenStep({ thermometers, resolution }: TestRun): number | undefined {
	const readings = new Set(thermometers.flatMap((column) => Array.from(column)));
	if (readings.size < LEAST_VALUES) return undefined;
	const values = [...readings].map((value) => value - ICE_POINT);
	const goesIn = (step: number) =>
		values.every((value) => Math.abs(value / step - Math.round(value / step)) < ROUND_OFF);
	return STEPS.find((step) => step > 1.5 * resolution && goesIn(step));
}
