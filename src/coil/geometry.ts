import { DomainError, requireWithin } from "../errors.ts";
import type { Fluid } from "../fluids/fluid.ts";
import type { Coil } from "./coil.ts";

/** Share of the coil's length in each layer by overlap of heights, top layer first [N], Σ = 1.
 *  A coil without height is in one layer; DomainError contradictory where its bottom is above its top. */
export function coilShares(coil: Coil, layers: number): Float64Array {
	requireWithin("coil.bottom", coil.bottom, 0, 1);
	requireWithin("coil.top", coil.top, 0, 1);
	if (coil.bottom > coil.top)
		throw new DomainError("contradictory", "coil.bottom", "the bottom of the coil is above its top", {
			bottom: coil.bottom,
			top: coil.top,
		});
	const shares = new Float64Array(layers);
	const height = coil.top - coil.bottom;
	if (height * layers < 1e-9) {
		shares[Math.min(layers - 1, Math.floor((1 - coil.bottom) * layers))] = 1;
		return shares;
	}
	for (let layer = 0; layer < layers; layer++) {
		const overlap = Math.min(coil.top, 1 - layer / layers) - Math.max(coil.bottom, 1 - (layer + 1) / layers);
		shares[layer] = Math.max(0, overlap) / height; // zero without overlap
	}
	return shares;
}

/** The upright cylindrical vessel of a coil. */
export interface Vessel {
	readonly fill: number; // [m³]
	readonly diameter: number; // [m]
}

/** Whether a coil fits in a vessel: touching turns are the closest, and the helix does not touch the wall. */
export type CoilFit =
	| { readonly outcome: "fits"; readonly turns: number; readonly pitch: number; readonly longest: number }
	| { readonly outcome: "tooLong"; readonly longest: number /* greatest length that fits [m] */ }
	| { readonly outcome: "tooWide"; readonly widest: number /* greatest helix diameter that fits [m] */ };

/** Turns and pitch of a coil in its vessel, and the longest tube that fits between its bottom and top.
 *  n turns of pitch p on diameter D need a tube of length √((nπD)² + (np)²), and p ≥ the tube's outer diameter.
 *  The film correlations assume that water flows freely between turns: a pitch of 1.5 tube diameters or more (common practice, no source). */
export function coilFits(coil: Coil, vessel: Vessel): CoilFit {
	const widest = vessel.diameter - coil.outerDiameter;
	if (coil.coilDiameter > widest) return { outcome: "tooWide", widest };
	const band = ((coil.top - coil.bottom) * vessel.fill) / ((Math.PI / 4) * vessel.diameter ** 2);
	const around = Math.PI * coil.coilDiameter;
	const longest = Math.hypot((band / coil.outerDiameter) * around, band);
	if (coil.length > longest) return { outcome: "tooLong", longest };
	const turns = Math.sqrt(Math.max(0, coil.length ** 2 - band ** 2)) / around; // a tube shorter than the band has no turn
	return { outcome: "fits", turns, pitch: band / turns, longest };
}

/** Heat capacity of the coil's wall and of the fluid in it [J/K]. */
export function coilHeldHeatCapacity(coil: Coil, fluid: Fluid, temperature: number): number {
	const bore = (Math.PI / 4) * coil.innerDiameter ** 2;
	const wall = (Math.PI / 4) * coil.outerDiameter ** 2 - bore;
	const content = bore * fluid.density(temperature) * fluid.heatCapacity(temperature);
	return coil.length * (content + wall * coil.wallHeatCapacity);
}
