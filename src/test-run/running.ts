import type { TestRun } from "./run.ts";

const DARK = 5; // [W/m²] a pyrheliometer's zero error; common practice, no source
const NIGHT = 1800; // [s] without beam after which the loop counts as resting; a shorter dark period is a cloud; common practice, no source

/** Whether the dish was heating the tank over each span between rows [N − 1]: according to the pump column,
 *  else wherever there is no half hour without beam; true without either column. */
export function runningSpans(run: TestRun): boolean[] {
	const spans = Math.max(0, run.time.length - 1);
	if (run.pumpOn !== undefined) return run.pumpOn.slice(0, spans);
	const running = new Array<boolean>(spans).fill(true);
	const beam = run.beam;
	if (beam === undefined) return running;
	let from = 0;
	for (let row = 0; row <= spans; row++) {
		if (row < spans && beam[row]! <= DARK && beam[row + 1]! <= DARK) continue;
		if (run.time[row]! - run.time[from]! >= NIGHT) running.fill(false, from, row);
		from = row + 1;
	}
	return running;
}
