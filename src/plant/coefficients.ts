/** Linearised heat loss of the receiver by path [W, W/K]. */
export interface LinearisedLoss {
	readonly refersTo: "wall" | "outlet"; // reference temperature of the linearisation
	readonly at: number; // [K]
	readonly radiated: number;
	readonly convected: number;
	readonly conducted: number;
	readonly unresolved: number;
	readonly radiatedSlope: number;
	readonly convectedSlope: number;
	readonly conductedSlope: number;
	readonly unresolvedSlope: number;
}

/** Coefficients of one coupled step of the loop in addition to the linearised receiver loss, constant during the step. */
export interface LoopCoefficients {
	readonly capacityRate: number; // ṁ·cp of the circulating fluid [W/K]; 0 at rest
	readonly ambient: number; // [K]
	readonly absorbed: number; // light absorbed [W]
	readonly film: number; // absorber wall to fluid [W/K]; not used where the loss refers to the outlet
	readonly supplyPipe: number; // to the air [W/K]
	readonly returnPipe: number; // to the air [W/K]
	readonly fittings: number; // to the air, on the supply side [W/K]
	readonly casing: number; // of the pump to the air, on the return side [W/K]
	readonly pumpHeat: number; // into the fluid on the return side [W]
	readonly coil: Float64Array; // [N] coil to each layer, top first [W/K]
	readonly layerTemperatures: Float64Array; // [N] top first [K]
	readonly layerCapacities: Float64Array; // [N] top first [J/K]
}

/** Heat flows of one step, each constant over it [W]. */
export interface LoopFluxes {
	readonly useful: number; // absorber to fluid
	readonly wallTemperature: number; // of the receiver's loss [K]
	readonly radiated: number;
	readonly convected: number;
	readonly conducted: number;
	readonly unresolved: number;
	readonly supplyPipe: number;
	readonly fittings: number;
	readonly returnPipe: number;
	readonly casing: number;
	readonly toWater: number;
	readonly toLayers: Float64Array; // [N] top first
	readonly temperatures: Float64Array; // [4] of the lumps at the end of the step, from the linear solution [K]
	readonly net: Float64Array; // [4] into each lump
}

export function totalLoss(loss: LinearisedLoss): number {
	return loss.radiated + loss.convected + loss.conducted + loss.unresolved;
}

export function totalSlope(loss: LinearisedLoss): number {
	return loss.radiatedSlope + loss.convectedSlope + loss.conductedSlope + loss.unresolvedSlope;
}
