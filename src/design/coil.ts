import type { Coil } from "../coil/coil.ts";
import { coilFits, type Vessel } from "../coil/geometry.ts";
import { type Designed, statedOr } from "./assumption.ts";
import { practice } from "./grounds.ts";

/** A coil whose length may be stated by its turns. */
export interface SparseCoil extends Omit<Coil, "length" | "coilDiameter" | "gapResistance"> {
	readonly length?: number | undefined; // along the tube [m]
	readonly turns?: number | undefined; // an alternative to the length
	readonly coilDiameter?: number | undefined; // of the helix, centre to centre [m]
	readonly doubleWall: boolean; // two walls that touch, with a vented gap
}

const HELIX = 0.7; // [-] helix over vessel's diameter; common practice, no source
const USUAL_LENGTH = 12; // [m] common practice, no source
const CLOSEST_PITCH = 1.5; // [-] over the tube's diameter, so that water passes between turns; common practice, no source
const GAP = 3e-4; // [m²K/W] of a double wall with touching, grooved tubes; common practice, no source

/** The coil wound into its vessel. */
export function designCoil(coil: SparseCoil, vessel: Vessel): Designed<Coil> {
	return coilNamed("coil", coil, vessel);
}

/** The coil of an oil vessel, whose assumptions are about the vessel. */
export function designVesselCoil(coil: SparseCoil, vessel: Vessel): Designed<Coil> {
	return coilNamed("vessel.coil", coil, vessel);
}

/** Height from the coil's lowest turn to its highest [m]. */
export function coilBand({ top, bottom }: Pick<Coil, "top" | "bottom">, vessel: Vessel): number {
	return Math.max(0, top - bottom) * (vessel.fill / ((Math.PI / 4) * vessel.diameter ** 2));
}

function coilNamed(
	name: "coil" | "vessel.coil",
	{ turns, doubleWall, ...coil }: SparseCoil,
	vessel: Vessel,
): Designed<Coil> {
	const helix = statedOr(
		coil.coilDiameter,
		`${name}.coilDiameter` as const,
		HELIX * vessel.diameter,
		practice("0.7 times the diameter of the tank or vessel"),
	);
	const wound = { ...coil, coilDiameter: helix.design, gapResistance: doubleWall ? GAP : 0 };
	const length = statedOr(
		coil.length ?? (turns === undefined ? undefined : lengthOfTurns(turns, wound, vessel)),
		`${name}.length` as const,
		lengthThatFits({ ...wound, length: 0 }, vessel),
		practice("12 m, or as much as fits with half a tube's width between turns"),
	);
	return {
		design: { ...wound, length: length.design },
		assumed: [...helix.assumed, ...length.assumed],
	};
}

function lengthOfTurns(turns: number, coil: Omit<Coil, "length">, vessel: Vessel): number {
	return Math.hypot(turns * Math.PI * coil.coilDiameter, coilBand(coil, vessel));
}

/** The usual length, or as much as fits with water between the turns [m]. */
function lengthThatFits(empty: Coil, vessel: Vessel): number {
	const fit = coilFits(empty, vessel);
	const longest = fit.outcome === "fits" ? fit.longest / CLOSEST_PITCH : USUAL_LENGTH;
	return Math.min(USUAL_LENGTH, longest);
}
