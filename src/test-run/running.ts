import type { TestRun } from "./run.ts";

const DARK = 5; // [W/m²] a pyrheliometer's zero error; common practice, no source
const NIGHT = 1800; // [s] without beam for which a loop is taken to rest; a shorter dark spell is a cloud; common practice, no source

/** Whether the dish was heating the tank over each span between rows [N − 1]: as the pump's column says,
 *  else wherever no half hour passed without beam; with neither column, throughout. */
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
