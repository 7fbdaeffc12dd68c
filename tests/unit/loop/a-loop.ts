import { mineralOil } from "../../../src/fluids/mineral-oil.ts";
import type { Loop, Pipe, Pump } from "../../../src/loop/loop.ts";

export const celsius = (t: number): number => t + 273.15;

/** Ten metres of 15 mm copper under 30 mm of dry rock wool, unless told otherwise. */
export function aPipe(changes: Partial<Pipe>): Pipe {
	return {
		length: 10,
		innerDiameter: 0.013,
		outerDiameter: 0.015,
		wallConductivity: 380,
		wallHeatCapacity: 3.45e6,
		roughness: 1.5e-6,
		insulation: { material: "mineralWool", thickness: 0.03, moisture: 0, surfaceEmittance: 0.9 },
		...changes,
	};
}

/** Two such pipes of VG 32 oil and a small gear pump, unless told otherwise. */
export function aLoop({ pump, ...changes }: Partial<Omit<Loop, "pump">> & { pump?: Partial<Pump> }): Loop {
	return {
		fluid: mineralOil(32),
		supply: aPipe({}),
		return: aPipe({}),
		fittingsLossFactor: 10,
		fittingsLossCoefficient: 0.5,
		control: { startDifference: 8, stopDifference: 3, highLimit: 363, oilLimit: 433, hysteresis: 5 },
		expansionVolume: 2e-3,
		...changes,
		pump: {
			flow: 4 / 60_000,
			electricPower: 40,
			efficiency: 0.25,
			heatToFluid: 0.4,
			maximumPressure: 200_000,
			casingLossCoefficient: 0.3,
			heldHeatCapacity: 2000,
			...pump,
		},
	};
}
