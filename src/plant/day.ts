import type { Weather } from "../sky/weather.ts";
import { layerHeatCapacity } from "../tank/model.ts";
import { tapDemand } from "../tap/demand.ts";
import { serveTap } from "../tap/serve.ts";
import type { ControlState } from "./control.ts";
import { dayOutcome } from "./day-outcome.ts";
import type { Conditions } from "./exchange.ts";
import { AS_CORRELATED, type ModelFactors } from "./factors.ts";
import { type PlantModel, plantModel } from "./model.ts";
import { nodeCapacity, RECEIVER } from "./nodes.ts";
import type { DayOutcome } from "./outcome.ts";
import type { Plant, Task } from "./plant.ts";
import { type DayRecords, emptyRecords, recordRow, recordStep } from "./records.ts";
import { type PlantState, restedState } from "./state.ts";
import { decided, plantStep, whereDishFaces } from "./step.ts";
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
	let time = from;
	let current = state;
	while (time < to) {
		const control = decided(model, current);
		const dt = Math.min(to - time, innerStep(model, current, control, now));
		time = to - time - dt < 1e-6 ? to : time + dt;
		const report = plantStep(model, current, control, now, dt, records.ledger);
		recordStep(records, report, model.plant.loop.pump.flow, time, dt);
		current = report.state;
	}
	return current;
}

const RESTING_RISE = 5; // [K] of a resting receiver in one inner step, so that the pump does not start late
const AWAY = 10; // [s] of an inner step while the fluid's limit keeps the dish away
const SHORTEST = 4; // [s] of any inner step

/** How long the plant may be marched in one go, so that neither pump nor dish acts late [s]: a lit receiver at rest rises by a
 *  few kelvin; one with flow, and the tank, by no more than what parts them from the limits that turn the dish away. */
function innerStep(model: PlantModel, state: PlantState, control: ControlState, now: Conditions): number {
	const power = now.beam * model.apertureArea * model.light.absorbed;
	if (power === 0) return Number.POSITIVE_INFINITY;
	const facing = whereDishFaces(model, control, now);
	switch (facing) {
		case "onSun":
			return stepOnSun(model, state, control, power);
		case "oilLimit":
			return AWAY; // the fluid cools within seconds, and the dish must not come back late
		case "tankLimit":
		case "below":
			return Number.POSITIVE_INFINITY;
		default:
			return facing satisfies never;
	}
}

function stepOnSun(model: PlantModel, state: PlantState, control: ControlState, power: number): number {
	const { oilLimit, highLimit } = model.plant.loop.control;
	const oil = state.loop.temperatures[RECEIVER]!;
	const toOilLimit = Math.max(0, oilLimit - oil);
	const rise = control.pump === "off" ? Math.min(RESTING_RISE, toOilLimit) : toOilLimit;
	const receiver = (rise * nodeCapacity(model.nodes, RECEIVER, oil)) / power;
	const top = state.tank.temperatures[0]!;
	const tankCapacity = model.tank.layers * layerHeatCapacity(model.tank, top);
	const tank = (Math.max(0, highLimit - top) * tankCapacity) / power;
	return Math.max(SHORTEST, Math.min(receiver, tank));
}
