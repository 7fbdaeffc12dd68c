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

/** The coil as the core takes it, what the request leaves out still open. */
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
				contradictory(`${pointer}/${name}`, "lengthM and turns say the same thing: give only one"),
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
				`the coil's top at ${fourDigits(coil.topHeight)} of the height is not above its bottom at ${fourDigits(coil.bottomHeight)}`,
			),
		];
	return designs.coil ? windingFaults("/coil", "tank", coil, designs.coil, designs.tank) : [];
};

const NARROWEST_HELIX = 2; // [-] over the tube's bore, up to which flow in a helix is worked out

/** What keeps a coil from being wound into the vessel it stands in.
 *  @param pointer  of the coil     @param place  what the vessel is called */
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
				`a tube of this bore is hardly wound to a helix of ${fourDigits(wound.coilDiameter)} m; the narrowest is ${fourDigits(narrowest)} m`,
			),
		];
	const fit = coilFits(wound, inside);
	const lengthAt = `${pointer}/${coil.turns === undefined ? "lengthM" : "turns"}`;
	if (fit.outcome === "tooWide") {
		const detail = `a helix of ${fourDigits(wound.coilDiameter)} m does not fit the ${place}; the widest is ${fourDigits(fit.widest)} m`;
		return [impossible(`${pointer}/coilDiameterM`, detail)];
	}
	if (fit.outcome === "tooLong") {
		const detail = `a coil of ${fourDigits(wound.length)} m does not fit the ${place}; the longest between those heights is ${fourDigits(fit.longest)} m`;
		return [impossible(lengthAt, detail)];
	}
	const band = coilBand(wound, inside);
	if (wound.length >= band) return [];
	const detail = `a coil of ${fourDigits(wound.length)} m does not reach from its bottom to its top, ${fourDigits(band)} m above it`;
	return [impossible(lengthAt, detail)];
}
