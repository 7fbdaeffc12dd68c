import { contradictory, outOfRange, type Rule, said } from "../validation/rule.ts";
import { coreDish, type Dish } from "./dish.ts";

type WithDish = { readonly dish: Dish };

const SIZES = ["mirrorAreaM2", "apertureM2", "diameterM"] as const;

/** The sizes that a dish names. */
function sizesGiven(dish: Dish): readonly string[] {
	return SIZES.filter((name) => (dish as Readonly<Record<string, unknown>>)[name] !== undefined);
}

/** Whether a dish has one size, so that the rest can be worked out. */
export const isSized = (dish: Dish): boolean => sizesGiven(dish).length === 1;

/** A dish has one size. */
export const dishSize: Rule<WithDish> = ({ dish }) => {
	const given = sizesGiven(dish);
	const choice =
		dish.kind === "twoAxis" ? "diameterM or apertureM2" : "mirrorAreaM2, apertureM2 or diameterM";
	if (given.length === 0) return [contradictory("/dish", `the dish has no size: give ${choice}`)];
	if (given.length === 1) return [];
	return given.map((name) =>
		contradictory(`/dish/${name}`, `the dish has ${given.length} sizes: give only one of ${choice}`),
	);
};

/** Focal length and rim angle say the same thing. */
export const dishFocus: Rule<WithDish> = ({ dish }) =>
	dish.kind === "twoAxis" && dish.focalLengthM !== undefined && dish.rimAngleDeg !== undefined
		? ["focalLengthM", "rimAngleDeg"].map((name) =>
				contradictory(`/dish/${name}`, "focalLengthM and rimAngleDeg say the same thing: give only one"),
			)
		: [];

const WIDEST_OFFSET = 0.9; // [-] radius over focal length up to which the off-axis spot is worked out

/** An off-axis mirror stays clear of its focus. */
export const dishOffset: Rule<WithDish> = ({ dish }) => {
	if (dish.kind !== "offsetPolar" || dish.focalLengthM === undefined || !isSized(dish)) return [];
	const { mirrorArea, focalLength } = coreDish(dish, (_, value) => value) as {
		mirrorArea: number;
		focalLength: number;
	};
	const least = (0.483 * Math.sqrt(mirrorArea)) / WIDEST_OFFSET;
	return focalLength < least
		? [
				outOfRange(
					"/dish/focalLengthM",
					`the focus of a mirror of ${said(mirrorArea)} m² must be at least ${said(least)} m away`,
				),
			]
		: [];
};
