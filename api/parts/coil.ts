import { z } from "@hono/zod-openapi";
import {
	type Coil as CoreCoil,
	type Tank as CoreTank,
	coilFits,
	practice,
	WALL_MATERIALS,
} from "../../src/index.ts";
import { assume, type Fill } from "../wire/defaults.ts";
import { metres, ratio, toSi } from "../wire/units.ts";
import { tube, wall } from "./tube.ts";

export const Coil = z
	.strictObject({
		...tube(13, 15, practice("15 mm copper tube, wide enough for cold oil")),
		lengthM: metres("Along the tube. Left out: from turns, else 12 m or what fits.", 0.2, 500).optional(),
		turns: z
			.number()
			.min(0.5)
			.max(1000)
			.meta({ description: "Stands in for the length.", "x-unit": "1" })
			.optional(),
		coilDiameterM: metres(
			"Of the helix, centre to centre. Left out: 0.7 tank diameters.",
			0.02,
			6,
		).optional(),
		material: wall("What the coil is made of.", "copper", practice("conducts best")),
		bottomHeight: assume(
			ratio("Of its lowest turn, as a share of the filled height.", 0, 1),
			0.05,
			practice("low, where the water is coldest"),
		),
		topHeight: assume(
			ratio("Of its highest turn, as a share of the filled height.", 0, 1),
			0.6,
			practice("leaves the top of the tank still"),
		),
		doubleWall: assume(
			z.boolean().meta({
				description: "Two walls with a vented gap, so that a leak shows before it reaches the water.",
			}),
			false,
			practice("the usual coil; local codes may ask for a double wall"),
		),
	})
	.openapi("Coil", {
		description: "The helical tube in the tank that gives the heat to the water.",
		example: { lengthM: 12, innerDiameterMm: 13, outerDiameterMm: 15 },
	});

export type Coil = z.output<typeof Coil>;

const HELIX = 0.7; // [-] helix over tank diameter; common practice, no source
const USUAL_LENGTH = 12; // [m] common practice, no source
const CLOSEST_PITCH = 1.5; // [-] over the tube's diameter, so that water passes between turns; common practice, no source
const GAP = 3e-4; // [m²K/W] of a double wall with touching, grooved tubes; common practice, no source

/** The coil as the core wants it, in its tank. */
export function coreCoil(coil: Coil, tank: CoreTank, fill: Fill): CoreCoil {
	const metal = WALL_MATERIALS[coil.material];
	const coilDiameter =
		coil.coilDiameterM ?? fill("/coil/coilDiameterM", HELIX * tank.diameter, practice("0.7 tank diameters"));
	const lengthless = {
		innerDiameter: toSi.millimetres(coil.innerDiameterMm),
		outerDiameter: toSi.millimetres(coil.outerDiameterMm),
		coilDiameter,
		wallConductivity: metal.conductivity,
		wallHeatCapacity: metal.heatCapacity,
		bottom: coil.bottomHeight,
		top: coil.topHeight,
		gapResistance: coil.doubleWall ? GAP : 0,
	};
	return { ...lengthless, length: coil.lengthM ?? lengthOf(coil, { ...lengthless, length: 0 }, tank, fill) };
}

/** From the turns, else the usual length or as much as fits with water between the turns [m]. */
function lengthOf(coil: Coil, empty: CoreCoil, tank: CoreTank, fill: Fill): number {
	if (coil.turns !== undefined)
		return Math.hypot(coil.turns * Math.PI * empty.coilDiameter, coilBand(empty, tank));
	const fit = coilFits(empty, tank);
	const longest = fit.outcome === "fits" ? fit.longest / CLOSEST_PITCH : USUAL_LENGTH;
	return fill(
		"/coil/lengthM",
		Math.min(USUAL_LENGTH, longest),
		practice("12 m, or what fits the tank with half a tube's width between turns"),
	);
}

/** Height from the coil's lowest turn to its highest [m]. */
export function coilBand(coil: Pick<CoreCoil, "top" | "bottom">, tank: CoreTank): number {
	return Math.max(0, coil.top - coil.bottom) * (tank.fill / ((Math.PI / 4) * tank.diameter ** 2));
}
