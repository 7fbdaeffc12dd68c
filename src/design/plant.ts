import { boreVolume } from "../loop/bore.ts";
import type { Plant } from "../plant/plant.ts";
import { hasTube } from "../receiver/receiver.ts";
import { boilingPoint, standardPressure } from "../sky/atmosphere.ts";
import type { Site } from "../sky/site.ts";
import type { Designed } from "./assumption.ts";
import { designCoil, type SparseCoil } from "./coil.ts";
import { designDish, type SparseDish } from "./dish.ts";
import { designLoop, type SparseLoop } from "./loop.ts";
import { designReceiver } from "./receiver.ts";
import type { SparseReceiver } from "./sparse-receiver.ts";
import { designTank, type SparseTank, tankBoilingPoint } from "./tank.ts";

/** An incomplete description of a plant. */
export interface SparsePlant {
	readonly site: Site;
	readonly dish: SparseDish;
	readonly receiver: SparseReceiver;
	readonly loop: SparseLoop;
	readonly coil: SparseCoil;
	readonly tank: SparseTank;
	readonly mains: number; // temperature of the cold feed [K]
}

/** The complete plant: each size that was not stated follows from the others. */
export function designPlant(sparse: SparsePlant): Designed<Plant> {
	const { site, mains } = sparse;
	const dish = designDish(sparse.dish);
	const receiver = designReceiver(sparse.receiver, dish.design, sparse.loop.fluid, site.elevation);
	const tank = designTank(sparse.tank, mains);
	const coil = designCoil(sparse.coil, tank.design);
	const inReceiver = hasTube(receiver.design) ? boreVolume(receiver.design.tube) : 0;
	const loop = designLoop(sparse.loop, {
		content: boreVolume(coil.design) + inReceiver,
		tankBoiling: tankBoilingPoint(tank.design, site.elevation),
		openBoiling: boilingPoint(standardPressure(site.elevation)),
	});
	return {
		design: {
			site,
			dish: dish.design,
			receiver: receiver.design,
			loop: loop.design,
			coil: coil.design,
			tank: tank.design,
		},
		assumed: [dish, receiver, loop, coil, tank].flatMap(({ assumed }) => assumed),
	};
}
