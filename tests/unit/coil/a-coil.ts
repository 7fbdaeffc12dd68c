import type { Coil } from "../../../src/coil/coil.ts";

/** A copper coil of 12 m, 15 × 1 mm, in the lower half of its tank unless told otherwise. */
export function aCoil(changes: Partial<Coil>): Coil {
	return {
		innerDiameter: 0.013,
		outerDiameter: 0.015,
		length: 12,
		coilDiameter: 0.3,
		wallConductivity: 380,
		wallHeatCapacity: 3.45e6,
		bottom: 0.05,
		top: 0.5,
		gapResistance: 0,
		...changes,
	};
}
