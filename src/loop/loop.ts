import type { Fluid } from "../fluids/fluid.ts";
import type { Insulation } from "../heat/insulation.ts";

/** One run of pipe from end to end. */
export interface Pipe {
	readonly length: number; // [m]
	readonly innerDiameter: number; // [m]
	readonly outerDiameter: number; // [m]
	readonly wallConductivity: number; // [W/mK]
	readonly wallHeatCapacity: number; // volumetric [J/m³K]
	readonly roughness: number; // [m]
	readonly insulation: Insulation;
}

/** A circulating pump: it gives its set flow as long as its hydraulic power and head allow. */
export interface Pump {
	readonly flow: number; // set point [m³/s]
	readonly electricPower: number; // drawn while running, at most [W]
	readonly efficiency: number; // hydraulic over electric, 0–1
	readonly heatToFluid: number; // share of the electric losses that ends up in the fluid, 0–1
	readonly maximumPressure: number; // [Pa]
	readonly casingLossCoefficient: number; // of the casing to the air [W/K]
	readonly heldHeatCapacity: number; // of casing and content [J/K]
}

export interface Control {
	readonly startDifference: number; // receiver over tank sensor that starts the pump [K]
	readonly stopDifference: number; // and that stops it [K]
	readonly highLimit: number; // of the top of the tank; the dish turns away [K]
	readonly oilLimit: number; // of the fluid leaving the receiver; the dish turns away [K]
	readonly hysteresis: number; // it turns back this far below the limit [K]
}

/** The closed circuit between receiver and coil. */
export interface Loop {
	readonly fluid: Fluid;
	readonly supply: Pipe; // receiver to coil
	readonly return: Pipe; // coil to receiver
	readonly fittingsLossFactor: number; // Σ ζ of bends and valves, on the supply pipe's velocity head
	readonly fittingsLossCoefficient: number; // heat bridge of fittings and supports [W/K]
	readonly pump: Pump;
	readonly control: Control;
	readonly expansionVolume: number; // [m³]
}
