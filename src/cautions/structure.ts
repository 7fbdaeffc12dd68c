import type { Dish } from "../dish/dish.ts";
import type { CautionRule } from "./caution.ts";

/** Wind load and weight on a structure. */
export const structure: CautionRule = ({ plant: { dish, tank } }) => [
	{
		code: "windAndWeight",
		severity: "warning",
		parameters: {
			mirrorArea: {
				kind: "area",
				value: sailArea(dish),
			},
			water: { kind: "volume", value: tank.fill },
		},
		message:
			"A dish of {mirrorArea} is a sail, and {water} of water weigh a kilogram a litre. A structural engineer must prove roof, mast and anchors for wind, snow and quake to your local building code; the dish must stow itself in a storm.",
	},
];

/** Area of a dish that is exposed to wind [m²]. */
function sailArea(dish: Dish): number {
	switch (dish.kind) {
		case "twoAxis":
			return (Math.PI / 4) * dish.diameter ** 2;
		case "offsetPolar":
			return dish.mirrorArea;
		default:
			return dish satisfies never;
	}
}
