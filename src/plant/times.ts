import type { Task } from "./plant.ts";

/** Length of a simulation step [s]: the requested step, shortened to an integer fraction of the row step of the series. */
function stepLength(task: Task): number {
	return task.seriesStep / Math.ceil(task.seriesStep / task.step - 1e-9);
}

/** Instants of the simulation, including start and end [n + 1], unix time [s]; the last step may be shorter.
 *  Weather is needed at these instants. */
export function stepTimes(task: Task): Float64Array {
	const step = stepLength(task);
	const steps = Math.max(1, Math.ceil((task.end - task.start) / step - 1e-9));
	return Float64Array.from({ length: steps + 1 }, (_, i) => Math.min(task.start + i * step, task.end));
}
