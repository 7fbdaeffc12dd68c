import type { Fluid } from "../fluids/fluid.ts";

/** The heat capacity of the loop is in four lumps, in flow order; the temperature of a lump is that of the fluid leaving it. */
export const RECEIVER = 0;
export const SUPPLY = 1;
export const COIL = 2;
export const RETURN = 3;
export const NODES = 4;

/** Contents of the lumps. The mass of fluid is constant; expansion into the vessel is neglected (≤ 7 % by 120 °C). */
export interface NodeModel {
	readonly fluid: Fluid;
	readonly fluidMass: Float64Array; // [4] kg
	readonly metal: Float64Array; // [4] J/K
}

/** Temperatures of the lumps and their energies, which are conserved (zero at 273.15 K). */
export interface NodeState {
	readonly temperatures: Float64Array; // [4] K
	readonly energies: Float64Array; // [4] J
}

const MOST_ITERATIONS = 20;
const CLOSE = 1e-10; // [K] last Newton step

/** Heat content of a lump relative to 273.15 K [J]. */
export function nodeEnergy(model: NodeModel, node: number, temperature: number): number {
	return (
		model.fluidMass[node]! * model.fluid.enthalpy(temperature) + model.metal[node]! * (temperature - 273.15)
	);
}

/** Heat capacity of a lump at a temperature [J/K]. */
export function nodeCapacity(model: NodeModel, node: number, temperature: number): number {
	return model.fluidMass[node]! * model.fluid.heatCapacity(temperature) + model.metal[node]!;
}

/** Temperature of a lump with a given heat content [K] (Newton's method from a close guess; without heat capacity, the guess). */
export function nodeTemperature(model: NodeModel, node: number, energy: number, guess: number): number {
	let temperature = guess;
	for (let i = 0; i < MOST_ITERATIONS; i++) {
		const capacity = nodeCapacity(model, node, temperature);
		if (capacity === 0) return guess;
		const correction = (energy - nodeEnergy(model, node, temperature)) / capacity;
		temperature += correction;
		if (Math.abs(correction) < CLOSE) break;
	}
	return temperature;
}

/** State of the lumps at given temperatures [4] [K]. */
export function nodeState(model: NodeModel, temperatures: Float64Array): NodeState {
	return { temperatures, energies: temperatures.map((t, node) => nodeEnergy(model, node, t)) };
}
