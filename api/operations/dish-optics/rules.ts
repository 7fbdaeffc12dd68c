import { hasTube, mirrorWidth } from "../../../src/index.ts";
import { dishFocus, dishOffset, dishSize, hemisphereKnown, type WithDish } from "../../parts/dish.ts";
import {
	hollowBehindOpening,
	receiverTubeWall,
	receiverWithinDish,
	tubeWound,
} from "../../parts/receiver.ts";
import { contradictory, fourDigits, impossible, type Rule } from "../../validation/rule.ts";
import type { DishOpticsRequest } from "./request.ts";

/** What the light falls into has an aperture. */
const receiverHasAperture: Rule<DishOpticsRequest> = ({ receiver }) =>
	hasTube(receiver)
		? []
		: [
				contradictory(
					"/receiver/kind",
					"a measured efficiency line holds its spillage and has no aperture: give a cavity, an open coil or a glazed coil",
				),
			];

/** Every aperture of the curve is smaller than the dish that lights it. */
const curveWithinDish: Rule<DishOpticsRequest, WithDish> = ({ curveApertureDiameterM = [] }, { dish }) => {
	if (!dish) return [];
	const across = mirrorWidth(dish);
	return curveApertureDiameterM.flatMap((diameter, i) =>
		diameter >= across
			? [
					impossible(
						`/curveApertureDiameterM/${i}`,
						`an aperture of ${fourDigits(diameter)} m is as large as the dish of ${fourDigits(across)} m that is to light it`,
					),
				]
			: [],
	);
};

/** What a request for optics must keep to. */
export const OPTICS_RULES: readonly Rule<DishOpticsRequest, WithDish>[] = [
	dishSize,
	dishFocus,
	dishOffset,
	receiverHasAperture,
	receiverWithinDish,
	hollowBehindOpening,
	tubeWound,
	receiverTubeWall,
	hemisphereKnown,
	curveWithinDish,
];
