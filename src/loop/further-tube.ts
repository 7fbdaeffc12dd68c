import type { Fluid } from "../fluids/fluid.ts";
import type { Segment } from "./flow.ts";

/** A tube in the circuit in addition to its two pipes: that of the receiver, or a coil. */
export interface FurtherTube {
	readonly length: number; // [m]
	readonly innerDiameter: number; // [m]
	readonly roughness: number; // [m]
	readonly helixDiameter: number; // centre to centre [m]; 0 if straight
}

/** The tube filled with fluid of one temperature [K], as a segment of the circuit. */
export function furtherSegment(tube: FurtherTube, fluid: Fluid, temperature: number): Segment {
	const { length, innerDiameter, roughness, helixDiameter } = tube;
	return {
		length,
		innerDiameter,
		roughness,
		helixRatio: helixDiameter === 0 ? 0 : innerDiameter / helixDiameter,
		density: fluid.density(temperature),
		viscosity: fluid.viscosity(temperature),
	};
}
