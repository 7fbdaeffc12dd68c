import type { PlantModel } from "./model.ts";
import type { Shortfall } from "./outcome.ts";
import type { Task } from "./plant.ts";
import type { DayRecords } from "./records.ts";

/** Limit that kept the tank from its target; the most restrictive one comes first. */
export function shortfall(model: PlantModel, task: Task, records: DayRecords): Shortfall {
	const target = task.target.temperature;
	if (target >= model.boilingPoint || records.ledger.vented > 0) return "limitedByBoiling";
	if (records.tankLimitTime > 0) return "limitedByHighLimit";
	if (records.ledger.beam === 0) return "noSun";
	if (records.onSunTime === 0 && records.oilLimitTime === 0) return "sunBelowDish";
	if (records.pumpTime === 0) return "pumpNeverStarted";
	if (records.oilLimitTime > 0) return "limitedByOilLimit";
	return target >= model.plant.loop.control.highLimit ? "limitedByHighLimit" : "tooLittleHeat";
}
