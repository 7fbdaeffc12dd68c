import type { Dish } from "../dish/dish.ts";
import { absorberWidth } from "../receiver/narrowest-absorber.ts";
import { hasTube } from "../receiver/receiver.ts";
import type { CautionRule } from "./caution.ts";

/** A receiver that shades more of its dish than the blocked fraction. */
export const receiverShade: CautionRule = ({ plant: { dish, receiver } }) => {
	const shaded = shadedDiameter(dish);
	if (shaded === undefined || !hasTube(receiver)) return [];
	const outer = absorberWidth(receiver) + 2 * (receiver.tube.outerDiameter + receiver.insulation.thickness);
	const shade = Math.min(1, (outer / shaded) ** 2);
	if (shade <= dish.blockedFraction) return [];
	return [
		{
			code: "receiverShade",
			severity: "info",
			parameters: {
				outerDiameter: { kind: "length", value: outer },
				shade: { kind: "ratio", value: shade },
				blocked: { kind: "ratio", value: dish.blockedFraction },
			},
			message:
				"With its insulation the receiver is {outerDiameter} wide and shades {shade} of the aperture; the blocked fraction is {blocked}. The answer is too bright by the difference: state a larger blocked fraction, or have the dish's maker or a licensed engineer slim the receiver.",
		},
	];
};

/** Diameter of the aperture that a receiver shades [m]; undefined where it is outside the beam. */
function shadedDiameter(dish: Dish): number | undefined {
	switch (dish.kind) {
		case "twoAxis":
			return dish.diameter;
		case "offsetPolar":
			return undefined;
		default:
			return dish satisfies never;
	}
}
