import type { Plant } from "../plant/plant.ts";
import type { CautionRule } from "./caution.ts";

/** What parts a fluid from the water. */
interface Parted {
	readonly plant: {
		readonly loop: Pick<Plant["loop"], "fluid">;
		readonly coil: Pick<Plant["coil"], "gapResistance">;
	};
}

/** Loop fluid next to drinking water. */
export const drinkingWater: CautionRule<Parted> = ({ plant: { loop, coil } }) =>
	!loop.fluid.potable && coil.gapResistance === 0
		? [
				{
					code: "singleWall",
					severity: "warning",
					parameters: { fluid: loop.fluid.name },
					message:
						"One wall parts {fluid} from the water, and a leak goes unseen into what people may drink. Use a double-walled coil or keep this water from drinking and cooking, as your local plumbing code says.",
				},
			]
		: [];
