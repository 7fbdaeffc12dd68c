import { heatContents, storeHeatCapacity } from "./heat-content.ts";
import { meanOver } from "./integrals.ts";
import { NORMAL_95 } from "./intervals.ts";
import { readingUncertainty, type TestRun, waterTemperature } from "./run.ts";
import type { Estimate } from "./trajectory-fit.ts";

/** Heat delivered to the tank, from the first row to the last. */
export interface Delivered {
	readonly duration: number; // [s]
	readonly start: number; // water temperature [K]
	readonly end: number; // [K]
	readonly heatCapacity: number; // of water and wall at the mean temperature [J/K]
	readonly heat: number; // stored in water and wall [J]
	readonly power: Estimate; // mean [W]; its interval follows from the resolution of the thermometers
	readonly efficiency: Estimate | undefined; // heat over beam on the aperture; undefined where either is unknown or zero
}

export function delivered(run: TestRun): Delivered {
	const last = run.time.length - 1;
	const heat = heatContents(run);
	const duration = run.time[last]! - run.time[0]!;
	const [start, end] = [waterTemperature(run, 0), waterTemperature(run, last)];
	const heatCapacity = storeHeatCapacity(run, (start + end) / 2);
	const gained = heat[last]! - heat[0]!;
	const power = {
		value: gained / duration,
		halfWidth: (NORMAL_95 * Math.SQRT2 * heatCapacity * readingUncertainty(run)) / duration,
	};
	return {
		duration,
		start,
		end,
		heatCapacity,
		heat: gained,
		power,
		efficiency: efficiencyOf(run, power),
	};
}

function efficiencyOf({ beam, aperture, time }: TestRun, power: Estimate): Estimate | undefined {
	if (beam === undefined || aperture === undefined) return undefined;
	const onAperture = aperture * meanOver(time, (row) => beam[row]!, 0, time.length - 1);
	if (!(onAperture > 0)) return undefined;
	return { value: power.value / onAperture, halfWidth: power.halfWidth / onAperture };
}
