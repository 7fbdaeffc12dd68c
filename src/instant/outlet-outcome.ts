import { water } from "../fluids/water.ts";
import { boreVolume } from "../loop/bore.ts";
import type { Pipe } from "../loop/loop.ts";
import { pipeRun } from "../loop/pipe-run.ts";
import type { Conditions } from "./conditions.ts";
import type { Duty } from "./duty.ts";
import { heatedStream } from "./heated-stream.ts";
import type { Heater } from "./heater.ts";
import { massUntilHot, pipeSurfaceTemperature } from "./outlet-pipe.ts";
import type { InstantRow } from "./row.ts";
import { flowOf, flows } from "./steady.ts";
import { type InstantTask, outletPipe } from "./task.ts";

/** A flow through the focus at the temperature that results. */
export interface DrawnFlow {
	readonly leaving: number | undefined; // at the outlet of the receiver [K]; undefined for steam, like the next
	readonly atTap: number | undefined; // at the end of the pipe [K]
}

/** The pipe from receiver to tap under the best sun. */
export interface OutletOutcome {
	readonly content: number; // [m³]
	readonly untilHot: number; // water that runs before hot water arrives [kg]
	readonly skin: number; // surface temperature while water runs [K]
}

/** Temperatures of a flow through the focus at the outlet of the receiver and at the tap. */
export function drawnFlow(
	heater: Heater,
	outlet: Pipe,
	{ cold, boiling }: Duty,
	massFlow: number,
	conditions: Conditions,
): DrawnFlow {
	const stream = heatedStream(heater, { fluid: water, inlet: cold, massFlow }, conditions);
	const leaving = stream.kind === "heated" ? stream.outlet : cold; // without gain it leaves at feed temperature
	if (!(leaving < boiling)) return { leaving: undefined, atTap: undefined };
	if (outlet.length === 0) return { leaving, atTap: leaving };
	const { ambient, wind, pressure } = conditions;
	const flow = massFlow / water.density(leaving);
	const run = pipeRun(outlet, water, { inletTemperature: leaving, flow, ambient, wind, pressure });
	return { leaving, atTap: run.outletTemperature };
}

/** Result of the pipe to the tap; without flow, its surface temperature is that for water at the wanted temperature. */
export function outletOutcome(
	{ arrangement, duty }: InstantTask,
	{ steady, conditions }: InstantRow,
): OutletOutcome | undefined {
	const pipe = outletPipe(arrangement);
	if (!pipe) return undefined;
	const mean = flows(steady) && steady.outlet ? (steady.outlet.leaving + duty.wanted) / 2 : duty.wanted;
	return {
		content: boreVolume(pipe),
		untilHot: massUntilHot(pipe, duty),
		skin:
			pipe.length === 0 ? conditions.ambient : pipeSurfaceTemperature(pipe, flowOf(steady), mean, conditions),
	};
}
