import type { Dish } from "../dish/dish.ts";
import type { WallMaterialId } from "../heat/wall-materials.ts";
import type { Heater } from "../instant/heater.ts";
import type { InstantOutcome } from "../instant/outcome.ts";
import type { InstantTask } from "../instant/task.ts";
import type { DayAir } from "./caution.ts";

/** Materials of the parts that its arrangement has. */
export interface InstantWalls {
	readonly outlet: WallMaterialId | undefined;
	readonly vessel: WallMaterialId | undefined;
	readonly coil: WallMaterialId | undefined;
}

/** Input of a rule about an instant heater. */
export interface InstantCircumstances {
	readonly dish: Dish;
	readonly heater: Heater;
	readonly task: InstantTask;
	readonly air: DayAir;
	readonly walls: InstantWalls;
	readonly outcome: InstantOutcome;
}
