import type { PlantModel } from "./model.ts";
import type { Task } from "./plant.ts";
import { type DayRecords, meanTemperature } from "./records.ts";
import type { PlantState } from "./state.ts";

/** The target's temperature at an instant, with the cumulative beam and heat to the water. */
export interface TargetReading {
	readonly time: number; // [s]
	readonly temperature: number; // [K]
	readonly toWater: number; // [J]
	readonly beam: number; // [J]
}

export function targetReading(
	model: PlantModel,
	state: PlantState,
	task: Task,
	time: number,
	records: DayRecords,
): TargetReading {
	return {
		time,
		temperature: targetTemperature(model, state, task.target.at),
		toWater: records.ledger.toWater,
		beam: records.ledger.beam,
	};
}

/** First instant at which the temperature reaches the target between two readings, by linear interpolation; undefined if it does not. */
export function crossing(
	target: number,
	before: TargetReading,
	after: TargetReading,
): TargetReading | undefined {
	if (before.temperature >= target) return before;
	if (!(after.temperature >= target)) return undefined;
	const share = (target - before.temperature) / (after.temperature - before.temperature);
	return {
		time: before.time + share * (after.time - before.time),
		temperature: target,
		toWater: before.toWater + share * (after.toWater - before.toWater),
		beam: before.beam + share * (after.beam - before.beam),
	};
}

function targetTemperature(model: PlantModel, state: PlantState, at: Task["target"]["at"]): number {
	const layers = state.tank.temperatures;
	switch (at) {
		case "mean":
			return meanTemperature(layers);
		case "top":
			return layers[0]!;
		case "outlet": {
			const fromTop = Math.floor((1 - model.plant.tank.outletHeight) * layers.length);
			return layers[Math.min(layers.length - 1, fromTop)]!;
		}
		default:
			return at satisfies never;
	}
}
