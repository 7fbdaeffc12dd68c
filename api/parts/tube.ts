import { z } from "@hono/zod-openapi";
import { type Grounds, WALL_MATERIALS, type WallMaterialId } from "../../src/index.ts";
import { contradictory, fourDigits, type RuleFault } from "../validation/rule.ts";
import { assume } from "../wire/defaults.ts";
import { millimetres } from "../wire/units.ts";

export const WALLS = Object.keys(WALL_MATERIALS) as [WallMaterialId, ...WallMaterialId[]];

/** Inner and outer diameter of a tube, with the defaults of its place. */
export function tube(innerMm: number, outerMm: number, grounds: Grounds) {
	return {
		innerDiameterMm: assume(millimetres("Inner diameter of the tube.", 2, 200), innerMm, grounds),
		outerDiameterMm: assume(
			millimetres("Outer diameter of the tube, without insulation.", 3, 220),
			outerMm,
			grounds,
		),
	};
}

export const wall = (description: string, material: WallMaterialId, grounds: Grounds) =>
	assume(z.enum(WALLS).meta({ description }), material, grounds);

interface Tube {
	readonly innerDiameterMm: number;
	readonly outerDiameterMm: number;
}

/** A tube is wider outside than inside. */
export function tubeWall(pointer: string, tube: Tube): readonly RuleFault[] {
	return tube.outerDiameterMm <= tube.innerDiameterMm
		? [
				contradictory(
					`${pointer}/outerDiameterMm`,
					`must be larger than innerDiameterMm (${fourDigits(tube.innerDiameterMm)} mm); ${fourDigits(tube.outerDiameterMm)} mm is not`,
				),
			]
		: [];
}
