import type { Conditions } from "./conditions.ts";
import type { Heater } from "./heater.ts";
import { leastFlow } from "./least-flow.ts";
import { boilsOnWall, flowOf, powerOf, type Steady } from "./steady.ts";
import { type InstantTask, outletPipe, steadyFlow } from "./task.ts";

/** Whether the demand is met under one sun. */
export type Serving = "serves" | "tooLittle" | "boils";

/** Result of a heater under one sun. */
export interface InstantRow {
	readonly conditions: Conditions;
	readonly steady: Steady;
	readonly efficiency: number; // heat to the water over beam on the aperture; 0 without beam
	readonly leastFlow: number; // smallest flow without boiling in the receiver [kg/s]; 0 where none boils, and with a vessel
	readonly serving: Serving;
}

const CLOSE = 1e-3; // [-] tolerance of the wanted flow, finer than any tap

export function instantRow(heater: Heater, task: InstantTask, conditions: Conditions): InstantRow {
	const { arrangement, duty } = task;
	const steady = steadyFlow(arrangement, heater, duty, conditions);
	const least = outletPipe(arrangement) ? leastFlow(heater, duty, conditions) : 0;
	const beam = conditions.beam * heater.apertureArea;
	return {
		conditions,
		steady,
		efficiency: beam > 0 ? powerOf(steady) / beam : 0,
		leastFlow: least,
		serving: serving(task, steady, least),
	};
}

function serving({ duty, wantedFlow }: InstantTask, steady: Steady, least: number): Serving {
	const flow = flowOf(steady);
	if (!(flow > 0 && flow >= (wantedFlow ?? 0) * (1 - CLOSE))) return "tooLittle";
	const drawn = wantedFlow ?? flow;
	return drawn < least || boilsOnWall(steady, duty.boiling) ? "boils" : "serves";
}
