import { requireWithin } from "../errors.ts";
import { water } from "../fluids/water.ts";
import { mixInversions } from "./inversion.ts";
import {
	layerEnergy,
	layerHeatCapacity,
	layerTemperature,
	type TankModel,
	type TankState,
	updateTemperatures,
} from "./model.ts";

export interface DrawOff {
	readonly state: TankState;
	readonly drawn: number; // heat of the water that left, relative to the incoming water [J]
	readonly outletEnthalpy: number; // mean of the water that left [J/kg], zero at 273.15 K
}

const SUBSTEP = 0.1; // [-] of a layer, where incoming water sinks or rises and mixes on its way
const MOST_SUBSTEPS = 2000; // after the content of 200 layers the tank has the inlet temperature
const SPENT = 1e-8; // [K] difference from the inlet below which a draw changes nothing
const NEGLIGIBLE = 1e-20; // [-] weight below the last digit of any excess
const LEAST_DIFFERENCE = 1e-3; // [K] below which the heat capacity replaces the secant of the enthalpy

/** Draws water from a tank while the same mass enters at another temperature.
 *  The water passes the layers between inlet and outlet as a series of mixed cells. With x = m/M, M a layer's mass and the water
 *  equivalent of its wall, the excess of cell j over the inlet is Σₖ pₖ(x)·excess₀(j − k), pₖ = e⁻ˣ xᵏ/k!, and the heat that leaves
 *  is Σₖ P(k + 1, x)·excess₀(L − 1 − k), P the regularised lower gamma function: exact for any mass in one step.
 *  @param mass  through the tank [kg]     @param inletTemperature  of the incoming water [K]
 *  Assumes water and wall of a layer at one temperature. Where the incoming water is denser or lighter than its surroundings (not at the
 *  bottom, or warmer than the bottom), the draw is divided into steps of a tenth of a layer with mixing of inversions between them.
 *  Error   constant heat capacity between inlet and outlet in the water equivalent of the wall: 1e-4 of the heat
 *  Source  tanks in series: Levenspiel, Chemical Reaction Engineering, 3e, Wiley 1999, ch. 14
 *  Check   N = 1–20, tests/reference/tank.reference.ts */
export function drawOff(
	model: TankModel,
	before: TankState,
	mass: number,
	inletTemperature: number,
): DrawOff {
	requireWithin("tank.drawnMass", mass, 0, Number.MAX_VALUE);
	const outlet = before.temperatures[model.outletLayer]!;
	if (mass === 0) return { state: before, drawn: 0, outletEnthalpy: water.enthalpy(outlet) };
	const draining = drain(model, before, inletTemperature);
	const drawn = draining.take(mass);
	const outletEnthalpy = water.enthalpy(inletTemperature) + drawn / mass;
	return { state: draining.state(), drawn, outletEnthalpy };
}

/** A tank during a sequence of draws. */
export interface Drain {
	/** Draws a mass [kg]; returns its heat relative to the incoming water [J]. */
	take(mass: number): number;
	/** Present temperature of a layer [K]. */
	temperature(layer: number): number;
	/** Whether all water between inlet and outlet has the temperature of the incoming water, so that a draw changes nothing. */
	isSpent(): boolean;
	state(): TankState;
}

/** The same as `drawOff` for a sequence of draws; layer temperatures are computed only on request. */
export function drain(model: TankModel, before: TankState, inletTemperature: number): Drain {
	const { inletLayer, outletLayer } = model;
	const energies = before.energies.slice();
	const temperatures = before.temperatures.slice(); // of some layers a few draws ago, as initial guesses
	const cells = Math.abs(inletLayer - outletLayer) + 1;
	const stay = new Float64Array(cells);
	const pass = new Float64Array(cells);
	const inletEnergy = layerEnergy(model, inletTemperature);
	const spent = SPENT * layerHeatCapacity(model, inletTemperature);
	const first = Math.min(inletLayer, outletLayer);
	const bottom = model.layers - 1;
	const temperature = (layer: number): number => {
		temperatures[layer] = layerTemperature(model, energies[layer]!, temperatures[layer]!);
		return temperatures[layer]!;
	};
	const isSpent = (): boolean => {
		for (let layer = first; layer < first + cells; layer++)
			if (!(Math.abs(energies[layer]! - inletEnergy) <= spent)) return false;
		return true;
	};
	const isCalm = (): boolean =>
		inletLayer === bottom && (bottom === outletLayer || !(inletTemperature > temperature(bottom)));
	return {
		temperature,
		isSpent,
		take(mass) {
			const x = mass / cellMass(model, temperature(outletLayer), inletTemperature);
			const inOneStep = x <= SUBSTEP || isCalm() || isSpent();
			const steps = inOneStep ? 1 : Math.min(MOST_SUBSTEPS, Math.ceil(x / SUBSTEP));
			const reach = poissonWeights(x / steps, stay, pass);
			let drawn = 0;
			for (let i = 0; i < steps; i++) {
				drawn += shift(model, energies, inletEnergy, stay, pass, reach);
				mixInversions(energies);
			}
			return drawn;
		},
		state() {
			updateTemperatures(model, energies, temperatures);
			return { temperatures, energies };
		},
	};
}

/** Mass of a layer with the water equivalent of its wall [kg]. */
function cellMass(model: TankModel, outlet: number, inlet: number): number {
	const difference = outlet - inlet;
	const heatCapacity =
		Math.abs(difference) > LEAST_DIFFERENCE
			? (water.enthalpy(outlet) - water.enthalpy(inlet)) / difference
			: water.heatCapacity(outlet);
	return model.layerMass + model.layerWallCapacity / heatCapacity;
}

/** Poisson weights after x cell contents: share of a cell's excess that has moved k cells (`stay`), or further (`pass`).
 *  Each tail is summed from its small end, for precision in short draws.
 *  @returns  the last k with a weight that matters; weights beyond it are not written */
function poissonWeights(x: number, stay: Float64Array, pass: Float64Array): number {
	let last = 0;
	let weight = Math.exp(-x);
	let sum = weight;
	stay[0] = weight;
	while (last < stay.length - 1 && (last < x || weight > NEGLIGIBLE)) {
		last++;
		weight *= x / last;
		sum += weight;
		stay[last] = weight;
	}
	let tail = 1 - sum;
	if (x < last + 1) {
		tail = 0;
		for (let k = last + 1; weight > 0; k++) {
			weight *= x / k;
			if (!(tail + weight > tail)) break;
			tail += weight;
		}
	}
	for (let k = last; k >= 0; k--) {
		pass[k] = tail;
		tail += stay[k]!;
	}
	return last;
}

/** Moves the water by the weights, in place; returns the heat that left relative to the inlet [J]. */
function shift(
	model: TankModel,
	energies: Float64Array,
	inletEnergy: number,
	stay: Float64Array,
	pass: Float64Array,
	reach: number,
): number {
	const inlet = model.inletLayer;
	const onward = model.outletLayer < inlet ? -1 : 1;
	const last = stay.length - 1;
	let drawn = 0;
	for (let k = 0; k <= reach; k++) drawn += pass[k]! * (energies[inlet + onward * (last - k)]! - inletEnergy);
	for (let j = last; j >= 0; j--) {
		let excess = 0;
		const far = Math.min(j, reach);
		for (let k = 0; k <= far; k++) excess += stay[k]! * (energies[inlet + onward * (j - k)]! - inletEnergy);
		energies[inlet + onward * j] = inletEnergy + excess;
	}
	return drawn;
}
