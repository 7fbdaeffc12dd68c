import type { Tank } from "../../../src/tank/tank.ts";

/** A bare-sheet tank of 150 L, 5 cm of polyurethane, indoors at 20 °C, all at one temperature unless told otherwise. */
export function aTank(changes: Partial<Tank>): Tank {
	return {
		fill: 0.15,
		height: 1.2,
		diameter: 0.4,
		wallThickness: 0.002,
		wallConductivity: 50,
		wallHeatCapacity: 3.9e6,
		insulation: { material: "polyurethane", thickness: 0.05, moisture: 0, surfaceEmittance: 0.9 },
		fittingsFactor: 1,
		inletHeight: 0,
		outletHeight: 1,
		startTemperatures: new Float64Array(10).fill(333.15),
		reliefPressure: 0,
		surroundings: { kind: "indoors", temperature: 293.15 },
		...changes,
	};
}

/** The same without a wall worth counting, so that only water holds heat. */
export const wallless = { wallThickness: 0, wallHeatCapacity: 0 } as const;

/** Layers from top to bottom on a straight line [K]. */
export function graded(layers: number, top: number, bottom: number): Float64Array {
	return Float64Array.from(
		{ length: layers },
		(_, i) => top + ((bottom - top) * i) / Math.max(1, layers - 1),
	);
}

export const sum = (values: ArrayLike<number>): number => Array.from(values).reduce((a, b) => a + b, 0);
