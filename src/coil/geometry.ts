import { DomainError, requireWithin } from "../errors.ts";
import type { Fluid } from "../fluids/fluid.ts";
import type { Coil } from "./coil.ts";

/** Share of the coil's length in each layer by overlap of heights, top layer first [N], Σ = 1.
 *  A coil of no height lies in one layer; bottom above top is DomainError contradictory. */
export function coilShares(coil: Coil, layers: number): Float64Array {
	requireWithin("coil.bottom", coil.bottom, 0, 1);
	requireWithin("coil.top", coil.top, 0, 1);
	if (coil.bottom > coil.top)
		throw new DomainError("contradictory", "coil.bottom", "the coil's bottom lies above its top", {
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
		shares[layer] = Math.max(0, overlap) / height; // no overlap is no share
	}
	return shares;
}

/** The upright round vessel a coil is to be wound into. */
export interface Vessel {
	readonly fill: number; // [m³]
	readonly diameter: number; // [m]
}

/** Whether a coil can be wound so in a vessel: turns lie side by side at the closest, the helix stays clear of the wall. */
export type CoilFit =
	| { readonly outcome: "fits"; readonly turns: number; readonly pitch: number; readonly longest: number }
	| { readonly outcome: "tooLong"; readonly longest: number /* length that fits [m] */ }
	| { readonly outcome: "tooWide"; readonly widest: number /* helix diameter that fits [m] */ };

/** Turns and pitch of a coil in its vessel, and the longest tube that fits its band of height.
 *  n turns of pitch p on diameter D take a tube of length √((nπD)² + (np)²), and p ≥ the tube's outer diameter.
 *  The films assume water free to pass between turns: a pitch of 1.5 tube diameters or more (common practice, no source). */
export function coilFits(coil: Coil, vessel: Vessel): CoilFit {
	const widest = vessel.diameter - coil.outerDiameter;
	if (coil.coilDiameter > widest) return { outcome: "tooWide", widest };
	const band = ((coil.top - coil.bottom) * vessel.fill) / ((Math.PI / 4) * vessel.diameter ** 2);
	const around = Math.PI * coil.coilDiameter;
	const longest = Math.hypot((band / coil.outerDiameter) * around, band);
	if (coil.length > longest) return { outcome: "tooLong", longest };
	const turns = Math.sqrt(Math.max(0, coil.length ** 2 - band ** 2)) / around; // a tube shorter than the band makes no turn
	return { outcome: "fits", turns, pitch: band / turns, longest };
}

/** Heat capacity of the coil's wall and of the fluid in it [J/K]. */
export function coilHeldHeatCapacity(coil: Coil, fluid: Fluid, temperature: number): number {
	const bore = (Math.PI / 4) * coil.innerDiameter ** 2;
	const wall = (Math.PI / 4) * coil.outerDiameter ** 2 - bore;
	const content = bore * fluid.density(temperature) * fluid.heatCapacity(temperature);
	return coil.length * (content + wall * coil.wallHeatCapacity);
}
