import type { Dish, OffsetPolarDish, TwoAxisDish } from "../dish/dish.ts";
import { offsetPolarAperture } from "../dish/offset-polar.ts";
import { focalLengthAtRimAngle } from "../dish/paraboloid.ts";
import { DomainError } from "../errors.ts";
import { type Designed, statedOr } from "./assumption.ts";
import { handbook, measured, unconfirmed } from "./grounds.ts";

/** A two-axis dish of one size: its diameter or the area of its aperture. Of focal length and rim angle at most one is stated. */
export interface SparseTwoAxisDish extends Omit<TwoAxisDish, "diameter" | "focalLength"> {
	readonly diameter?: number | undefined; // of the aperture [m]
	readonly apertureArea?: number | undefined; // [m²]
	readonly focalLength?: number | undefined; // [m]
	readonly rimAngle?: number | undefined; // [rad]
}

/** An off-axis dish on a polar axis of one size: the area of its mirror, or of its aperture at the equinox. */
export interface SparseOffsetPolarDish extends Omit<OffsetPolarDish, "mirrorArea" | "focalLength"> {
	readonly mirrorArea?: number | undefined; // [m²]
	readonly apertureArea?: number | undefined; // facing the sun at the equinox [m²]
	readonly focalLength?: number | undefined; // [m]
}

export type SparseDish = SparseTwoAxisDish | SparseOffsetPolarDish;

/** Rim angle at which a flat receiver can be smallest [rad]. */
export const USUAL_RIM_ANGLE = (45 * Math.PI) / 180; // Duffie & Beckman, Solar Engineering of Thermal Processes, ch. 7 (from memory)
export const RIM_ANGLE_SOURCE = "Duffie & Beckman, Solar Engineering of Thermal Processes, ch. 7";
const OFFSET_FOCUS = 0.98; // [-] distance to the focus over the root of the mirror's area, of the 8 m² dish in Munir et al., Solar Energy 84 (2010) 1490 (from memory)

/** The dish with its focus. One without a size is DomainError contradictory. */
export function designDish(dish: SparseDish): Designed<Dish> {
	switch (dish.kind) {
		case "twoAxis":
			return designTwoAxis(dish);
		case "offsetPolar":
			return designOffsetPolar(dish);
		default:
			return dish satisfies never;
	}
}

/** Width of a mirror; of an off-axis one, the diameter of a disc of its area [m]. */
export function mirrorWidth(dish: Dish): number {
	switch (dish.kind) {
		case "twoAxis":
			return dish.diameter;
		case "offsetPolar":
			return Math.sqrt((4 * dish.mirrorArea) / Math.PI);
		default:
			return dish satisfies never;
	}
}

function designTwoAxis({ apertureArea, rimAngle, ...dish }: SparseTwoAxisDish): Designed<TwoAxisDish> {
	const [size, value] = onlySize({ diameter: dish.diameter, apertureArea });
	const diameter = size === "diameter" ? value : Math.sqrt((4 * value) / Math.PI);
	if (dish.focalLength !== undefined)
		return { design: { ...dish, diameter, focalLength: dish.focalLength }, assumed: [] };
	const { design: angle, assumed } = statedOr(
		rimAngle,
		"dish.rimAngle",
		USUAL_RIM_ANGLE,
		unconfirmed(handbook("the rim angle at which a flat receiver can be smallest", RIM_ANGLE_SOURCE)),
	);
	return { design: { ...dish, diameter, focalLength: focalLengthAtRimAngle(diameter, angle) }, assumed };
}

function designOffsetPolar({ apertureArea, ...dish }: SparseOffsetPolarDish): Designed<OffsetPolarDish> {
	const [size, value] = onlySize({ mirrorArea: dish.mirrorArea, apertureArea });
	const mirrorArea = size === "mirrorArea" ? value : value / offsetPolarAperture(1, 0, 0);
	const { design: focalLength, assumed } = statedOr(
		dish.focalLength,
		"dish.focalLength",
		OFFSET_FOCUS * Math.sqrt(mirrorArea),
		unconfirmed(
			measured(
				"the proportions of a published dish of 8 m²",
				"Munir, Hensel & Scheffler, Solar Energy 84 (2010) 1490",
			),
		),
	);
	return { design: { ...dish, mirrorArea, focalLength }, assumed };
}

/** The one size that is stated, by its name. */
function onlySize<Name extends string>(
	sizes: Readonly<Record<Name, number | undefined>>,
): readonly [name: Name, value: number] {
	const stated = (Object.keys(sizes) as Name[]).filter((name) => sizes[name] !== undefined);
	const [name] = stated;
	if (name === undefined || stated.length > 1)
		throw new DomainError("contradictory", "dish.size", "a dish must have exactly one size", {
			stated: stated.join(", "),
		});
	return [name, sizes[name]!];
}
