import { hasTube } from "../../../src/index.ts";
import { dishFocus, dishOffset, dishSize, isSized } from "../../parts/dish-rules.ts";
import { hemisphereKnown } from "../../parts/dish-season-rules.ts";
import {
	hollowBehindOpening,
	mirrorWidth,
	receiverWithinDish,
	tubeWound,
} from "../../parts/receiver-rules.ts";
import { receiverTubeWall } from "../../parts/tube-rules.ts";
import { contradictory, impossible, type Rule, refuseFaults, said } from "../../validation/rule.ts";
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
const curveWithinDish: Rule<DishOpticsRequest> = ({ dish, curveApertureDiameterM = [] }) => {
	if (!isSized(dish)) return [];
	const across = mirrorWidth(dish);
	return curveApertureDiameterM.flatMap((diameter, i) =>
		diameter >= across
			? [
					impossible(
						`/curveApertureDiameterM/${i}`,
						`an aperture of ${said(diameter)} m is as large as the dish of ${said(across)} m that is to light it`,
					),
				]
			: [],
	);
};

const RULES: readonly Rule<DishOpticsRequest>[] = [
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

/** Ends a request for optics that keeps the contract but contradicts itself or asks for the impossible. */
export function requireSoundOptics(request: DishOpticsRequest): void {
	refuseFaults(RULES.flatMap((rule) => rule(request)));
}
