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
import { initialState, type PlantState } from "./state.ts";
import { controlDecision, dishFacing, plantStep } from "./step.ts";
import { crossing, type TargetReading, targetReading } from "./target.ts";

/** One day of a plant: time of the target temperature, final temperatures and energy balance.
 *  @param weather  at the instants of `stepTimes(task)`
 *  Assumes the loop starts the day at air temperature with the pump off; air, wind and sun of a step are means of its ends.
 *  Error   first order in the step: at one minute, halving the step changes the time to target by less than 0.5 % */
export function warmUpDay(plant: Plant, weather: Weather, task: Task): DayOutcome {
	return factoredDay(plant, AS_CORRELATED, weather, task);
}

/** The same for a plant that differs from its correlations by given factors. */
export function factoredDay(plant: Plant, factors: ModelFactors, weather: Weather, task: Task): DayOutcome {
	const ambient = weather.ambient[0]!;
	const model = plantModel(plant, factors, (task.start + task.end) / 2, ambient);
	const start = initialState(model, ambient);
	const records = emptyRecords(start);
	recordRow(records, start, weather, 0);

	let state = start;
	let before = targetReading(model, start, task, task.start, records);
	let reached: TargetReading | undefined;
	let nextRow = task.start + task.seriesStep;
	const last = weather.time.length - 1;
	for (let i = 0; i < last; i++) {
		const to = weather.time[i + 1]!;
		state = stateAfterDraws(model, state, task, weather.time[i]!, to, records);
		state = stateAtNextInstant(model, state, weather, i, records);
		const after = targetReading(model, state, task, to, records);
		reached ??= crossing(task.target.temperature, before, after);
		before = after;
		if (to >= nextRow - 1e-6 || i === last - 1) {
			recordRow(records, state, weather, i + 1);
			nextRow += task.seriesStep;
		}
	}
	return dayOutcome({ model, task, weather, records, start, state, stop: reached ?? before, reached });
}

/** State after the draws between two instants. */
function stateAfterDraws(
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

/** State at instant i + 1 from that at i, in as many inner steps as the temperature rise of the receiver requires. */
function stateAtNextInstant(
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
		const control = controlDecision(model, current);
		const dt = Math.min(to - time, innerStep(model, current, control, now));
		time = to - time - dt < 1e-6 ? to : time + dt;
		const report = plantStep(model, current, control, now, dt, records.ledger);
		recordStep(records, report, model.plant.loop.pump.flow, time, dt);
		current = report.state;
	}
	return current;
}

const RESTING_RISE = 5; // [K] of a receiver without flow in one inner step, so that the pump does not start late
const AWAY = 10; // [s] inner step while the fluid limit keeps the dish turned away
const SHORTEST = 4; // [s] shortest inner step

/** Length of an inner step at which neither pump nor dish acts late [s]: a lit receiver without flow rises by a
 *  few kelvins; one with flow, and the tank, by at most the difference to the limits at which the dish turns away. */
function innerStep(model: PlantModel, state: PlantState, control: ControlState, now: Conditions): number {
	const power = now.beam * model.apertureArea * model.light.absorbed;
	if (power === 0) return Number.POSITIVE_INFINITY;
	const facing = dishFacing(model, control, now);
	switch (facing) {
		case "onSun":
			return stepOnSun(model, state, control, power);
		case "oilLimit":
			return AWAY; // the fluid cools within seconds, and the dish must not turn back late
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
