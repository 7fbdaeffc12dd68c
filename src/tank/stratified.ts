import { mixInversions } from "./inversion.ts";
import {
	layerEnergy,
	layerHeatCapacity,
	type TankModel,
	type TankState,
	updateTemperatures,
} from "./model.ts";

/** Inputs of a tank during one step. */
export interface TankInputs {
	readonly coilHeat: Float64Array; // [N] into each layer, top first [W]
	readonly lossCoefficient: number; // of the complete shell [W/K]
	readonly surroundings: number; // [K]
	readonly boilingPoint: number; // upper limit of layer temperatures [K]
}

export interface TankStep {
	readonly state: TankState;
	readonly loss: number; // to the surroundings [J]
	readonly vented: number; // heat of evaporation [J]
}

/** One step of a tank of N layers: coil, loss, conduction between neighbours, mixing of inversions, boiling.
 *  The temperatures at the end of the step follow from a linear system (backward Euler), stable for any dt; the fluxes at those
 *  temperatures are then applied to the energies, so Σ E_after = Σ E_before + Σ coil·dt − loss − vented to round-off.
 *  Assumes mixed layers; a layer at the boiling point releases all additional heat as steam, whose mass is neglected.
 *  Error   first order in dt: of the loss, dt over twice the time constant (0.01 % at 60 s and 100 h)
 *  Source  Duffie & Beckman, Solar Engineering of Thermal Processes, ch. 8 (multi-node tank)
 *  Check   exponential cooling, tests/reference/tank.reference.ts */
export function tankStep(model: TankModel, before: TankState, inputs: TankInputs, dt: number): TankStep {
	const temperatures = new Float64Array(model.layers);
	const energies = new Float64Array(model.layers);
	solveTemperatures(model, before.temperatures, inputs, dt, temperatures, energies);
	const loss = applyFluxes(model, before.energies, inputs, dt, temperatures, energies);
	mixInversions(energies);
	updateTemperatures(model, energies, temperatures);
	const vented = vent(model, inputs.boilingPoint, temperatures, energies);
	return { state: { temperatures, energies }, loss, vented };
}

/** Thomas's elimination of the tridiagonal system into `temperatures`; `ratio` is a work array. */
function solveTemperatures(
	model: TankModel,
	before: Float64Array,
	inputs: TankInputs,
	dt: number,
	temperatures: Float64Array,
	ratio: Float64Array,
): void {
	const last = model.layers - 1;
	const k = model.exchange;
	for (let i = 0; i <= last; i++) {
		const rate = layerHeatCapacity(model, before[i]!) / dt;
		const lossy = inputs.lossCoefficient * model.lossShares[i]!;
		let diagonal = rate + lossy + (i > 0 ? k : 0) + (i < last ? k : 0);
		let right = rate * before[i]! + inputs.coilHeat[i]! + lossy * inputs.surroundings;
		if (i > 0) {
			diagonal -= k * ratio[i - 1]!;
			right += k * temperatures[i - 1]!;
		}
		ratio[i] = k / diagonal;
		temperatures[i] = right / diagonal;
	}
	for (let i = last - 1; i >= 0; i--) temperatures[i]! += ratio[i]! * temperatures[i + 1]!;
}

/** Adds the heat flows of the step to the energies; returns the loss [J]. */
function applyFluxes(
	model: TankModel,
	before: Float64Array,
	inputs: TankInputs,
	dt: number,
	temperatures: Float64Array,
	energies: Float64Array,
): number {
	let loss = 0;
	let fromAbove = 0;
	for (let i = 0; i < model.layers; i++) {
		const lost =
			inputs.lossCoefficient * model.lossShares[i]! * (temperatures[i]! - inputs.surroundings) * dt;
		const toBelow =
			i + 1 < model.layers ? model.exchange * (temperatures[i]! - temperatures[i + 1]!) * dt : 0;
		energies[i] = before[i]! + inputs.coilHeat[i]! * dt - lost + fromAbove - toBelow;
		fromAbove = toBelow;
		loss += lost;
	}
	return loss;
}

/** Limits every layer to the boiling point; returns the excess heat [J]. */
function vent(
	model: TankModel,
	boilingPoint: number,
	temperatures: Float64Array,
	energies: Float64Array,
): number {
	let vented = 0;
	for (let i = 0; i < model.layers && temperatures[i]! > boilingPoint; i++) {
		const most = layerEnergy(model, boilingPoint);
		vented += energies[i]! - most;
		energies[i] = most;
		temperatures[i] = boilingPoint;
	}
	return vented;
}
