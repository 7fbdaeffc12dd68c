import { hasTube, mirrorWidth } from "../../../src/index.ts";
import { dishFocus, dishOffset, dishSize, hemisphereKnown, type WithDish } from "../../parts/dish.ts";
import {
	openingWithinCavity,
	receiverTubeWall,
	receiverWithinDish,
	tubeWindable,
} from "../../parts/receiver.ts";
import { contradictory, fourDigits, impossible, type Rule } from "../../validation/rule.ts";
import type { DishOpticsRequest } from "./request.ts";

/** The receiver has an aperture. */
const receiverHasAperture: Rule<DishOpticsRequest> = ({ receiver }) =>
	hasTube(receiver)
		? []
		: [
				contradictory(
					"/receiver/kind",
					"receiver.kind efficiencyLine already includes spillage and has no aperture; send cavity, openCoil or glazedCoil",
				),
			];

/** Every aperture of the curve is smaller than the dish. */
const curveWithinDish: Rule<DishOpticsRequest, WithDish> = ({ curveApertureDiameterM = [] }, { dish }) => {
	if (!dish) return [];
	const across = mirrorWidth(dish);
	return curveApertureDiameterM.flatMap((diameter, i) =>
		diameter >= across
			? [
					impossible(
						`/curveApertureDiameterM/${i}`,
						`an aperture of ${fourDigits(diameter)} m in curveApertureDiameterM is not smaller than the dish of ${fourDigits(across)} m; send a smaller one`,
					),
				]
			: [],
	);
};

/** Rules of a dish-optics request. */
export const OPTICS_RULES: readonly Rule<DishOpticsRequest, WithDish>[] = [
	dishSize,
	dishFocus,
	dishOffset,
	receiverHasAperture,
	receiverWithinDish,
	openingWithinCavity,
	tubeWindable,
	receiverTubeWall,
	hemisphereKnown,
	curveWithinDish,
];
