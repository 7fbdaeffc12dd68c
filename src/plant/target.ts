import type { PlantModel } from "./model.ts";
import type { Task } from "./plant.ts";
import { type DayRecords, meanTemperature } from "./records.ts";
import type { PlantState } from "./state.ts";

/** The watched temperature at an instant, with what had come in and gone to the water by then. */
export interface Sight {
	readonly time: number; // [s]
	readonly temperature: number; // [K]
	readonly toWater: number; // [J]
	readonly beam: number; // [J]
}

export function sight(
	model: PlantModel,
	state: PlantState,
	task: Task,
	time: number,
	records: DayRecords,
): Sight {
	return {
		time,
		temperature: watchedTemperature(model, state, task.target.at),
		toWater: records.ledger.toWater,
		beam: records.ledger.beam,
	};
}

/** When the watched temperature first met the target between two sights, by straight line; undefined if it did not. */
export function crossing(target: number, before: Sight, after: Sight): Sight | undefined {
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

function watchedTemperature(model: PlantModel, state: PlantState, at: Task["target"]["at"]): number {
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
