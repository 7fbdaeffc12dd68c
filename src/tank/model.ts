import { ICE_POINT } from "../constants.ts";
import { DomainError, requireWithin } from "../errors.ts";
import { water } from "../fluids/water.ts";
import { layerAtHeight, shellGeometry, shellLossShares } from "./geometry.ts";
import type { Tank } from "./tank.ts";

/** Constants of a tank for the simulation. All layers have the same mass of water and the same share of the wall.
 *  Assumes constant mass: expanding water goes to the expansion vessel or through the vent (≤ 4 % by 95 °C). */
export interface TankModel {
	readonly layers: number;
	readonly layerMass: number; // of water [kg]
	readonly layerWallCapacity: number; // heat capacity of the shell, shared equally [J/K]
	readonly lossShares: Float64Array; // [N] of the shell's loss, top first, Σ = 1
	readonly exchange: number; // conductance between neighbours through water and wall [W/K]
	readonly inletLayer: number;
	readonly outletLayer: number;
}

/** Temperatures of the layers, top first, and their energies, which are conserved (zero at 273.15 K). */
export interface TankState {
	readonly temperatures: Float64Array; // [N] K
	readonly energies: Float64Array; // [N] J
}

const MOST_LAYERS = 200;
const MOST_ITERATIONS = 20;
const CLOSE = 1e-6; // [K] last Newton step; the remaining error is of the order of its square

/** Layers, masses and conductances of a tank.
 *  Source  multi-node tank: Duffie & Beckman, Solar Engineering of Thermal Processes, ch. 8; EN 12977-3 determines the same parameters */
export function tankModel(tank: Tank): TankModel {
	const layers = tank.startTemperatures.length;
	requireWithin("tank.layers", layers, 1, MOST_LAYERS);
	let sum = 0;
	for (const temperature of tank.startTemperatures) {
		requireWithin("tank.startTemperature", temperature, water.range[0], water.range[1]);
		sum += temperature;
	}
	const mean = sum / layers;
	const shell = shellGeometry(tank);
	const ring = Math.PI * tank.wallThickness * (tank.diameter + tank.wallThickness);
	const perMetre = water.conductivity(mean) * shell.crossSection + tank.wallConductivity * ring;
	return {
		layers,
		layerMass: (tank.fill * water.density(mean)) / layers,
		layerWallCapacity: (shell.wallVolume * tank.wallHeatCapacity) / layers,
		lossShares: shellLossShares(tank, layers),
		exchange: (perMetre * layers) / shell.filledHeight,
		inletLayer: layerAtHeight(tank.inletHeight, layers),
		outletLayer: layerAtHeight(tank.outletHeight, layers),
	};
}

/** Heat content of a layer relative to 273.15 K [J]. */
export function layerEnergy(model: TankModel, temperature: number): number {
	return model.layerMass * water.enthalpy(temperature) + model.layerWallCapacity * (temperature - ICE_POINT);
}

/** Heat capacity of a layer, water and wall [J/K]. */
export function layerHeatCapacity(model: TankModel, temperature: number): number {
	return model.layerMass * water.heatCapacity(temperature) + model.layerWallCapacity;
}

/** Temperature of a layer with a given heat content [K], within 1e-9 K (Newton's method from a close guess). */
export function layerTemperature(model: TankModel, energy: number, guess: number): number {
	let temperature = guess;
	for (let i = 0; i < MOST_ITERATIONS; i++) {
		const step = (energy - layerEnergy(model, temperature)) / layerHeatCapacity(model, temperature);
		temperature += step;
		if (Math.abs(step) < CLOSE) return temperature;
	}
	throw new DomainError(
		"no_convergence",
		"tank.layerTemperature",
		"no temperature found for the heat content of a layer",
		{ energy, guess },
	);
}

/** State of the layers at given temperatures [N], top first [K]. */
export function tankState(model: TankModel, temperatures: Float64Array): TankState {
	if (temperatures.length !== model.layers)
		throw new DomainError(
			"contradictory",
			"tank.layers",
			"the state of a tank needs one temperature per layer",
			{
				layers: model.layers,
				temperatures: temperatures.length,
			},
		);
	return { temperatures, energies: temperatures.map((t) => layerEnergy(model, t)) };
}

/** Updates temperatures, which are also the initial guesses, from energies. A pooled layer takes the temperature of its neighbour. */
export function updateTemperatures(
	model: TankModel,
	energies: Float64Array,
	temperatures: Float64Array,
): void {
	for (let i = 0; i < model.layers; i++)
		temperatures[i] =
			i > 0 && energies[i] === energies[i - 1]
				? temperatures[i - 1]!
				: layerTemperature(model, energies[i]!, temperatures[i]!);
}
