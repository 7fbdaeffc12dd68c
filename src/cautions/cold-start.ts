import type { ColdStart } from "../loop/cold-start.ts";
import { type Caution, temperature } from "./caution.ts";

const STARVED = 0.05; // [-] of the set flow, below which it is negligible; common practice, no source

/** A pump limited by viscous fluid, at the coldest of the requested starts. */
export function starvedStart(fluid: string, starts: readonly ColdStart[]): readonly Caution[] {
	const worst = starts.reduce<ColdStart | undefined>(
		(most, start) => (most && most.duty.starved >= start.duty.starved ? most : start),
		undefined,
	);
	if (!worst || worst.duty.starved <= STARVED) return [];
	return [
		{
			code: "starvedColdStart",
			severity: "warning",
			parameters: {
				fluid,
				fluidTemperature: temperature(worst.temperature),
				shareOfFlow: { kind: "ratio", value: 1 - worst.duty.starved },
			},
			message:
				"With {fluid} at {fluidTemperature} the pump delivers only {shareOfFlow} of its set flow. A receiver in full sun then overheats: hold the dish off the sun until the fluid flows, or choose a wider pipe, a thinner fluid or a stronger pump with a qualified fitter.",
		},
	];
}
