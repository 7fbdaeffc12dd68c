import { z } from "@hono/zod-openapi";
import {
	type Coil as CoreCoil,
	coilBand,
	coilFits,
	practice,
	type SparseCoil,
	type Vessel,
	WALL_MATERIALS,
} from "../../src/index.ts";
import {
	contradictory,
	fourDigits,
	impossible,
	outOfRange,
	type Rule,
	type RuleFault,
} from "../validation/rule.ts";
import { assume } from "../wire/defaults.ts";
import { metres, ratio, toSi } from "../wire/units.ts";
import { tube, wall } from "./tube.ts";

export const Coil = z
	.strictObject({
		...tube(13, 15, practice("15 mm copper tube, wide enough for cold oil")),
		lengthM: metres(
			"Length of the coil's tube. If omitted, it follows from `turns`; without `turns`, it is 12 m or as much as fits.",
			0.2,
			500,
		).optional(),
		turns: z
			.number()
			.min(0.5)
			.max(1000)
			.meta({ description: "Number of turns of the coil, an alternative to `lengthM`.", "x-unit": "1" })
			.optional(),
		coilDiameterM: metres(
			"Diameter of the coil's helix, between centres of the tube. If omitted: 0.7 tank diameters.",
			0.02,
			6,
		).optional(),
		material: wall("Material of the coil's tube.", "copper", practice("conducts heat best")),
		bottomHeight: assume(
			ratio("Height of the coil's lowest turn, as a share of the filled height.", 0, 1),
			0.05,
			practice("low, where the water is coldest"),
		),
		topHeight: assume(
			ratio("Height of the coil's highest turn, as a share of the filled height.", 0, 1),
			0.6,
			practice("leaves the water at the top of the tank undisturbed"),
		),
		doubleWall: assume(
			z.boolean().meta({
				description:
					"Whether the coil has two walls with a vented gap, so that a leak shows before it reaches the water.",
			}),
			false,
			practice("the usual coil; local codes may require a double wall"),
		),
	})
	.openapi("Coil", {
		description: "The helical tube that transfers the heat to the water.",
		example: { lengthM: 12, innerDiameterMm: 13, outerDiameterMm: 15 },
	});

export type Coil = z.output<typeof Coil>;

/** The coil for the core, with omitted values left to the design. */
export function sparseCoil(coil: Coil): SparseCoil {
	const metal = WALL_MATERIALS[coil.material];
	return {
		innerDiameter: toSi.millimetres(coil.innerDiameterMm),
		outerDiameter: toSi.millimetres(coil.outerDiameterMm),
		length: coil.lengthM,
		turns: coil.turns,
		coilDiameter: coil.coilDiameterM,
		wallConductivity: metal.conductivity,
		wallHeatCapacity: metal.heatCapacity,
		bottom: coil.bottomHeight,
		top: coil.topHeight,
		doubleWall: coil.doubleWall,
	};
}

/** A coil has one length. */
export const coilLength: Rule<{ readonly coil: Coil }> = ({ coil }) => oneLength("/coil", coil);

/** @param pointer  of the coil */
export function oneLength(pointer: string, coil: Coil): readonly RuleFault[] {
	return coil.lengthM !== undefined && coil.turns !== undefined
		? ["lengthM", "turns"].map((name) =>
				contradictory(
					`${pointer}/${name}`,
					"lengthM and turns both set the length of the coil; send only one",
				),
			)
		: [];
}

/** The coil's top is above its bottom, and its tube fits between them. */
export const coilFitsTank: Rule<
	{ readonly coil: Coil },
	{ readonly coil: CoreCoil | undefined; readonly tank: Vessel }
> = ({ coil }, designs) => {
	if (coil.bottomHeight >= coil.topHeight)
		return [
			contradictory(
				"/coil/topHeight",
				`must be above bottomHeight (${fourDigits(coil.bottomHeight)}); ${fourDigits(coil.topHeight)} is not`,
			),
		];
	return designs.coil ? windingFaults("/coil", "tank", coil, designs.coil, designs.tank) : [];
};

const NARROWEST_HELIX = 2; // [-] over the tube's inner diameter, below which the flow model of a helix does not hold

/** Why a coil cannot be wound into its tank or vessel.
 *  @param pointer  of the coil     @param place  where the coil is */
export function windingFaults(
	pointer: string,
	place: "tank" | "vessel",
	coil: Coil,
	wound: CoreCoil,
	inside: Vessel,
): readonly RuleFault[] {
	const narrowest = NARROWEST_HELIX * wound.innerDiameter;
	if (wound.coilDiameter < narrowest)
		return [
			outOfRange(
				`${pointer}/coilDiameterM`,
				`must be at least ${fourDigits(narrowest)} m for a tube of this inner diameter; ${fourDigits(wound.coilDiameter)} m is not`,
			),
		];
	const fit = coilFits(wound, inside);
	const field = coil.turns === undefined ? "lengthM" : "turns";
	if (fit.outcome === "tooWide") {
		const detail = `must be at most ${fourDigits(fit.widest)} m to fit the ${place}; ${fourDigits(wound.coilDiameter)} m is not`;
		return [impossible(`${pointer}/coilDiameterM`, detail)];
	}
	if (fit.outcome === "tooLong") {
		const detail = `a coil of ${fourDigits(wound.length)} m does not fit the ${place}; send a smaller value of ${field}, for at most ${fourDigits(fit.longest)} m between bottomHeight and topHeight`;
		return [impossible(`${pointer}/${field}`, detail)];
	}
	const band = coilBand(wound, inside);
	if (wound.length >= band) return [];
	const detail = `a coil of ${fourDigits(wound.length)} m does not reach from bottomHeight to topHeight, ${fourDigits(band)} m above; send a larger value of ${field}`;
	return [impossible(`${pointer}/${field}`, detail)];
}
