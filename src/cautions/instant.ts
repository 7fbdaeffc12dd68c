import type { Dish } from "../dish/dish.ts";
import type { WallMaterialId } from "../heat/wall-materials.ts";
import type { Heater } from "../instant/heater.ts";
import type { InstantOutcome } from "../instant/outcome.ts";
import type { InstantTask } from "../instant/task.ts";
import type { DayAir } from "./caution.ts";

/** What its parts are made of, as far as its arrangement has them. */
export interface InstantWalls {
	readonly outlet: WallMaterialId | undefined;
	readonly vessel: WallMaterialId | undefined;
	readonly coil: WallMaterialId | undefined;
}

/** What a rule about an instant heater may look at. */
export interface InstantCircumstances {
	readonly dish: Dish;
	readonly heater: Heater;
	readonly task: InstantTask;
	readonly air: DayAir;
	readonly walls: InstantWalls;
	readonly outcome: InstantOutcome;
}
