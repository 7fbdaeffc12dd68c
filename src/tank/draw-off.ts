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
	readonly drawn: number; // heat of what left above what came in [J]
	readonly outletEnthalpy: number; // mean of what left [J/kg], zero at 273.15 K
}

const SUBSTEP = 0.1; // [-] of a layer, where incoming water sinks or rises on its way and has to mix in between
const MOST_SUBSTEPS = 2000; // beyond 200 layers' content the tank holds the inlet's temperature anyway
const SPENT = 1e-8; // [K] between ports and inlet, below which nothing that a draw moves can be told from what comes in
const NEGLIGIBLE = 1e-20; // [-] a weight that no excess makes felt in the last digit
const LEAST_DIFFERENCE = 1e-3; // [K] below which the heat capacity replaces the secant of the enthalpy

/** Draws water off a tank while the same mass comes in at another temperature.
 *  It passes the layers between inlet and outlet as a chain of mixed cells. With x = m/M, M a layer's mass and the water
 *  equivalent of its wall, the excess of cell j over the inlet is Σₖ pₖ(x)·excess₀(j − k), pₖ = e⁻ˣ xᵏ/k!, and the heat that left
 *  is Σₖ P(k + 1, x)·excess₀(L − 1 − k), P the regularised lower gamma function: exact for any mass in one go.
 *  @param mass  through the tank [kg]     @param inletTemperature  of what comes in [K]
 *  Assumes water and wall of a layer at one temperature. Where what comes in is heavier or lighter than its surroundings (not at the
 *  bottom, or warmer than it), the draw goes in steps of a tenth of a layer with mixing of inversions between.
 *  Error   heat capacity taken as constant between inlet and outlet, in the wall's water equivalent only: 1e-4 of the heat
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

/** A tank from which one draw after another is taken. */
export interface Drain {
	/** Takes so much [kg]; returns its heat above what came in [J]. */
	take(mass: number): number;
	/** Temperature of a layer as it is now [K]. */
	temperature(layer: number): number;
	/** Whether all between inlet and outlet has the temperature of what comes in, so that a draw changes nothing any more. */
	isSpent(): boolean;
	state(): TankState;
}

/** The same as `drawOff` for many draws in a row: of a layer's temperature it works out what is asked for. */
export function drain(model: TankModel, before: TankState, inletTemperature: number): Drain {
	const { inletLayer, outletLayer } = model;
	const energies = before.energies.slice();
	const temperatures = before.temperatures.slice(); // of some layers as they were a few draws ago: near guesses
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
			const whole = x <= SUBSTEP || isCalm() || isSpent();
			const steps = whole ? 1 : Math.min(MOST_SUBSTEPS, Math.ceil(x / SUBSTEP));
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

/** Poisson's weights after x cell contents: what of a cell's excess has moved on k cells (`stay`), or beyond them (`pass`).
 *  Each tail is summed from its small end, so that a short draw keeps its digits.
 *  @returns  the last k whose weights count; those beyond it are not written */
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

/** Moves the plug on by the weights, in place; returns the heat that left above the inlet's [J]. */
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
