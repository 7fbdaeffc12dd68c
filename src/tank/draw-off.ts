import { requireWithin } from "../errors.ts";
import { water } from "../fluids/water.ts";
import { mixInversions } from "./inversion.ts";
import { layerEnergy, settleTemperatures, type TankModel, type TankState } from "./model.ts";

export interface DrawOff {
	readonly state: TankState;
	readonly drawn: number; // heat of what left above what came in [J]
	readonly outletEnthalpy: number; // mean of what left [J/kg], zero at 273.15 K
}

const SUBSTEP = 0.1; // [-] of a layer, where incoming water sinks or rises on its way and has to mix in between
const MOST_SUBSTEPS = 2000; // beyond 200 layers' content the tank holds the inlet's temperature anyway
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
	requireWithin("mass drawn", mass, 0, Number.MAX_VALUE);
	const inletEnthalpy = water.enthalpy(inletTemperature);
	const outlet = before.temperatures[model.outletLayer]!;
	if (mass === 0) return { state: before, drawn: 0, outletEnthalpy: water.enthalpy(outlet) };

	const x = mass / cellMass(model, outlet, inletTemperature);
	const bottom = model.layers - 1;
	const calm =
		model.inletLayer === bottom &&
		(bottom === model.outletLayer || !(inletTemperature > before.temperatures[bottom]!));
	const steps = calm ? 1 : Math.min(MOST_SUBSTEPS, Math.ceil(x / SUBSTEP));
	const cells = Math.abs(model.inletLayer - model.outletLayer) + 1;
	const stay = new Float64Array(cells);
	const pass = new Float64Array(cells);
	poissonWeights(x / steps, stay, pass);

	const energies = before.energies.slice();
	const inletEnergy = layerEnergy(model, inletTemperature);
	let drawn = 0;
	for (let i = 0; i < steps; i++) {
		drawn += shift(model, energies, inletEnergy, stay, pass);
		mixInversions(energies);
	}
	const temperatures = before.temperatures.slice();
	settleTemperatures(model, energies, temperatures);
	return { state: { temperatures, energies }, drawn, outletEnthalpy: inletEnthalpy + drawn / mass };
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
 *  Each tail is summed from its small end, so that a short draw keeps its digits. */
function poissonWeights(x: number, stay: Float64Array, pass: Float64Array): void {
	const last = stay.length - 1;
	let weight = Math.exp(-x);
	let sum = weight;
	stay[0] = weight;
	for (let k = 1; k <= last; k++) {
		weight *= x / k;
		sum += weight;
		stay[k] = weight;
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
}

/** Moves the plug on by the weights, in place; returns the heat that left above the inlet's [J]. */
function shift(
	model: TankModel,
	energies: Float64Array,
	inletEnergy: number,
	stay: Float64Array,
	pass: Float64Array,
): number {
	const inlet = model.inletLayer;
	const onward = model.outletLayer < inlet ? -1 : 1;
	const last = stay.length - 1;
	let drawn = 0;
	for (let k = 0; k <= last; k++) drawn += pass[k]! * (energies[inlet + onward * (last - k)]! - inletEnergy);
	for (let j = last; j >= 0; j--) {
		let excess = 0;
		for (let k = 0; k <= j; k++) excess += stay[k]! * (energies[inlet + onward * (j - k)]! - inletEnergy);
		energies[inlet + onward * j] = inletEnergy + excess;
	}
	return drawn;
}
