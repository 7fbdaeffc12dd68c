import type { Coil } from "../coil/coil.ts";
import type { Dish } from "../dish/dish.ts";
import type { Loop } from "../loop/loop.ts";
import type { Receiver } from "../receiver/receiver.ts";
import type { Site } from "../sky/site.ts";
import type { Tank } from "../tank/tank.ts";
import type { Draw } from "../tap/draw.ts";

/** Everything that stands still while a day passes. */
export interface Plant {
	readonly site: Site;
	readonly dish: Dish;
	readonly receiver: Receiver;
	readonly loop: Loop;
	readonly coil: Coil;
	readonly tank: Tank;
}

/** What a day is asked for. */
export interface Task {
	readonly start: number; // unix time [s]
	readonly end: number; // unix time [s]
	readonly step: number; // of the march [s]
	readonly seriesStep: number; // of the answer's columns [s]
	readonly target: { readonly temperature: number; readonly at: "mean" | "top" | "outlet" };
	readonly draws: readonly Draw[];
	readonly mains: number; // temperature of the cold feed [K]
}
