import { ICE_POINT } from "../constants.ts";
import type { TestRun } from "./run.ts";

const STEPS = [5, 2, 1, 0.5, 0.25, 0.2]; // [K] of usual thermometers
const LEAST_VALUES = 10; // different readings; finer ones are all multiples of 0.2 K by chance in one case of a thousand
const ROUND_OFF = 1e-6; // of a step

/** Observed step of a run's readings where it is coarser than the stated resolution [K]; else undefined. */
export function observedStep({ thermometers, resolution }: TestRun): number | undefined {
	const readings = new Set(thermometers.flatMap((column) => Array.from(column)));
	if (readings.size < LEAST_VALUES) return undefined;
	const values = [...readings].map((value) => value - ICE_POINT);
	const isMultiple = (step: number) =>
		values.every((value) => Math.abs(value / step - Math.round(value / step)) < ROUND_OFF);
	return STEPS.find((step) => step > 1.5 * resolution && isMultiple(step));
}
