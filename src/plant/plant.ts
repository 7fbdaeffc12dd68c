import type { Coil } from "../coil/coil.ts";
import type { Dish } from "../dish/dish.ts";
import type { Loop } from "../loop/loop.ts";
import type { Receiver } from "../receiver/receiver.ts";
import type { Site } from "../sky/site.ts";
import type { Tank } from "../tank/tank.ts";
import type { Draw } from "../tap/draw.ts";

/** The parts of a plant, constant during a day. */
export interface Plant {
	readonly site: Site;
	readonly dish: Dish;
	readonly receiver: Receiver;
	readonly loop: Loop;
	readonly coil: Coil;
	readonly tank: Tank;
}

/** Request for the simulation of a day. */
export interface Task {
	readonly start: number; // unix time [s]
	readonly end: number; // unix time [s]
	readonly step: number; // of the simulation [s]
	readonly seriesStep: number; // of the result columns [s]
	readonly target: { readonly temperature: number; readonly at: "mean" | "top" | "outlet" };
	readonly draws: readonly Draw[];
	readonly mains: number; // temperature of the cold feed [K]
}
