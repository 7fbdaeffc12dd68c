import type { Plant } from "../plant/plant.ts";
import type { CautionRule } from "./caution.ts";

/** The separation between fluid and water. */
interface Separation {
	readonly plant: {
		readonly loop: Pick<Plant["loop"], "fluid">;
		readonly coil: Pick<Plant["coil"], "gapResistance">;
	};
}

/** Loop fluid next to drinking water. */
export const drinkingWater: CautionRule<Separation> = ({ plant: { loop, coil } }) =>
	!loop.fluid.potable && coil.gapResistance === 0
		? [
				{
					code: "singleWall",
					severity: "warning",
					parameters: { fluid: loop.fluid.name },
					message:
						"Only one wall separates {fluid} from the water, and an unnoticed leak contaminates what people may drink. Use a double-walled coil or keep this water from drinking and cooking, as your local plumbing code requires.",
				},
			]
		: [];
