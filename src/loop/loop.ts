import type { Fluid } from "../fluids/fluid.ts";
import type { Insulation } from "../heat/insulation.ts";

/** A pipe from end to end. */
export interface Pipe {
	readonly length: number; // [m]
	readonly innerDiameter: number; // [m]
	readonly outerDiameter: number; // [m]
	readonly wallConductivity: number; // [W/mK]
	readonly wallHeatCapacity: number; // volumetric [J/m³K]
	readonly roughness: number; // [m]
	readonly insulation: Insulation;
}

/** A circulating pump: it delivers its set flow as far as hydraulic power and head allow. */
export interface Pump {
	readonly flow: number; // set point [m³/s]
	readonly electricPower: number; // drawn while running, at most [W]
	readonly efficiency: number; // hydraulic over electric, 0–1
	readonly heatToFluid: number; // share of the electric losses that heats the fluid, 0–1
	readonly maximumPressure: number; // [Pa]
	readonly casingLossCoefficient: number; // of the casing to the air [W/K]
	readonly heldHeatCapacity: number; // of casing and content [J/K]
}

export interface Control {
	readonly startDifference: number; // receiver over tank sensor that starts the pump [K]
	readonly stopDifference: number; // difference that stops it [K]
	readonly highLimit: number; // of the top of the tank; the dish turns away [K]
	readonly oilLimit: number; // of the fluid leaving the receiver; the dish turns away [K]
	readonly hysteresis: number; // difference below a limit at which the dish turns back to the sun [K]
}

/** The closed circuit between receiver and coil. */
export interface Loop {
	readonly fluid: Fluid;
	readonly supply: Pipe; // receiver to coil
	readonly return: Pipe; // coil to receiver
	readonly fittingsLossFactor: number; // Σ ζ of bends and valves, based on the velocity head in the supply pipe
	readonly fittingsLossCoefficient: number; // heat bridge of fittings and supports [W/K]
	readonly pump: Pump;
	readonly control: Control;
	readonly expansionVolume: number; // [m³]
}
