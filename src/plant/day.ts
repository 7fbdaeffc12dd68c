import type { Weather } from "../sky/weather.ts";
import { tapDemand } from "../tap/demand.ts";
import { serveTap } from "../tap/serve.ts";
import { dayOutcome } from "./day-outcome.ts";
import type { Conditions } from "./exchange.ts";
import { AS_CORRELATED, type ModelFactors } from "./factors.ts";
import { type PlantModel, plantModel } from "./model.ts";
import { nodeCapacity, RECEIVER } from "./nodes.ts";
import type { DayOutcome } from "./outcome.ts";
import type { Plant, Task } from "./plant.ts";
import { type DayRecords, emptyRecords, recordRow, recordStep } from "./records.ts";
import { type PlantState, restedState } from "./state.ts";
import { plantStep } from "./step.ts";
import { crossing, type Sight, sight } from "./target.ts";

/** A plant's day: when the tank reaches the target, how hot it ends, and where the sun's energy went.
 *  @param weather  at the instants of `marchTimes(task)`
 *  Assumes the loop starts the day at the air's temperature with the pump at rest; the air, wind and sun of a step are the means of its ends.
 *  Error   first order in the step: at one minute the time to target moves by less than 0.5 % when the step is halved */
export function warmUpDay(plant: Plant, weather: Weather, task: Task): DayOutcome {
	return factoredDay(plant, AS_CORRELATED, weather, task);
}

/** The same for a plant that departs from its correlations by these factors. */
export function factoredDay(plant: Plant, factors: ModelFactors, weather: Weather, task: Task): DayOutcome {
	const ambient = weather.ambient[0]!;
	const model = plantModel(plant, factors, (task.start + task.end) / 2, ambient);
	const start = restedState(model, ambient);
	const records = emptyRecords(start);
	recordRow(records, start, weather, 0);

	let state = start;
	let before = sight(model, start, task, task.start, records);
	let reached: Sight | undefined;
	let nextRow = task.start + task.seriesStep;
	const last = weather.time.length - 1;
	for (let i = 0; i < last; i++) {
		const to = weather.time[i + 1]!;
		state = servedTap(model, state, task, weather.time[i]!, to, records);
		state = marchedStep(model, state, weather, i, records);
		const after = sight(model, state, task, to, records);
		reached ??= crossing(task.target.temperature, before, after);
		before = after;
		if (to >= nextRow - 1e-6 || i === last - 1) {
			recordRow(records, state, weather, i + 1);
			nextRow += task.seriesStep;
		}
	}
	return dayOutcome({ model, task, weather, records, start, state, stop: reached ?? before, reached });
}

/** Draws what the taps ask for between two instants. */
function servedTap(
	model: PlantModel,
	state: PlantState,
	task: Task,
	from: number,
	to: number,
	records: DayRecords,
): PlantState {
	if (task.draws.length === 0) return state;
	let tank = state.tank;
	for (const demand of tapDemand(task.draws, from, to, task.mains)) {
		const served = serveTap(model.tank, tank, demand, task.mains);
		records.ledger.drawnAboveMains += served.drawnAboveMains;
		records.ledger.delivered += served.delivered;
		records.ledger.unmet += served.unmet;
		tank = served.state;
	}
	return { ...state, tank };
}

/** The march from instant i to i + 1, in as many inner steps as the receiver's rise wants. */
function marchedStep(
	model: PlantModel,
	state: PlantState,
	weather: Weather,
	i: number,
	records: DayRecords,
): PlantState {
	const from = weather.time[i]!;
	const to = weather.time[i + 1]!;
	const now: Conditions = {
		beam: (weather.beam[i]! + weather.beam[i + 1]!) / 2,
		ambient: (weather.ambient[i]! + weather.ambient[i + 1]!) / 2,
		wind: (weather.wind[i]! + weather.wind[i + 1]!) / 2,
		altitude: (weather.sunAltitude[i]! + weather.sunAltitude[i + 1]!) / 2,
	};
	const shortest = (to - from) / MOST_INNER_STEPS;
	let time = from;
	let current = state;
	while (time < to) {
		const wanted = current.control.pump === "on" ? to - time : restingStepLength(model, current, now);
		const dt = Math.min(to - time, Math.max(shortest, wanted));
		time = to - time - dt < 1e-6 ? to : time + dt;
		const report = plantStep(model, current, now, dt, records.ledger);
		recordStep(records, report, model.plant.loop.pump.flow, time, dt);
		current = report.state;
	}
	return current;
}

const FASTEST_RISE = 5; // [K] of a resting receiver in one inner step, so that the pump does not start late
const MOST_INNER_STEPS = 12; // in one step of the march

/** How long a receiver at rest may be marched before it has risen too far [s]. */
function restingStepLength(model: PlantModel, state: PlantState, now: Conditions): number {
	const capacity = nodeCapacity(model.nodes, RECEIVER, state.loop.temperatures[RECEIVER]!);
	const power = now.beam * model.apertureArea * model.light.absorbed;
	const rising = state.wall > state.loop.temperatures[RECEIVER]! || state.wall <= now.ambient;
	return rising && power > 0 ? (FASTEST_RISE * capacity) / power : Number.POSITIVE_INFINITY;
}
