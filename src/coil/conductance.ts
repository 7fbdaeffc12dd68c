import { GRAVITY } from "../constants.ts";
import type { Fluid } from "../fluids/fluid.ts";
import { water, waterExpansion } from "../fluids/water.ts";
import { helicalOutsideRange, nusseltHelical, wallPropertyFactor } from "../heat/helical-coil.ts";
import { NUSSELT_LAMINAR } from "../heat/internal-flow.ts";
import { nusseltHorizontalCylinder } from "../heat/natural-convection.ts";
import { cube } from "../numeric/power.ts";
import type { Coil } from "./coil.ts";

const FIRST_NUSSELT = 15; // [-] outside, initial guess: a 15 mm tube a few kelvins warmer than the water
const LEAST_DIFFERENCE = 0.1; // [K] of the wall above the water, below which the outside film tends smoothly to a constant
const PASSES = 2; // of the outside film; each reduces the error to a fifth

/** Conductances from the coil's fluid to the water of each layer, written into `out` [N], top first [W/K].
 *  Per metre of tube: inside film, wall, gap of a double wall and outside film in series. Inside: helical flow at the bulk temperature,
 *  corrected for the wall temperature, once for the complete coil; 3.66 at rest. Outside: natural convection of a horizontal cylinder on the tube's outer
 *  diameter, at the film temperature of each layer, with the excess of the wall found by two iterations.
 *  @param filmFactor  multiplies the inside film: 1 for the correlation itself
 *  @param shares  of the coil's length [N], from `coilShares`     @param oilTemperature  mean in the coil [K]
 *  @param flow  [m³/s], 0 at rest     @param layerTemperatures [N]  of the water [K]
 *  Assumes turns far enough apart for water to flow between them; the same outside convection for a wall colder than the water
 *  Error   inside as `nusseltHelical`; outside as `nusseltHorizontalCylinder`, the iterations within 1 %
 *  Source  Incropera & DeWitt 6e, ch. 3 and 11 (series resistances)
 *  Check   limits and a converged solution, tests/unit/coil/conductance.test.ts */
export function coilConductances(
	coil: Coil,
	filmFactor: number,
	shares: Float64Array,
	fluid: Fluid,
	oilTemperature: number,
	flow: number,
	layerTemperatures: Float64Array,
	out: Float64Array,
): void {
	const wall =
		Math.log(coil.outerDiameter / coil.innerDiameter) / (2 * Math.PI * coil.wallConductivity) +
		coil.gapResistance / (Math.PI * coil.outerDiameter);
	let outside = 1 / (Math.PI * FIRST_NUSSELT * water.conductivity(oilTemperature));
	let waterTemperature = 0;
	for (let layer = 0; layer < shares.length; layer++)
		waterTemperature += shares[layer]! * layerTemperatures[layer]!;
	const within =
		wall + insideResistance(coil, filmFactor, fluid, oilTemperature, flow, waterTemperature, wall + outside);
	for (let layer = 0; layer < shares.length; layer++) {
		const share = shares[layer]!;
		out[layer] = 0;
		if (share === 0) continue;
		outside = outsideResistance(coil, within, outside, oilTemperature, layerTemperatures[layer]!);
		out[layer] = (coil.length * share) / (within + outside);
	}
}

/** Reynolds and Prandtl number of the fluid in the coil. */
function coilFlow(coil: Coil, fluid: Fluid, temperature: number, flow: number) {
	const viscosity = fluid.viscosity(temperature);
	return {
		Re: (4 * flow * fluid.density(temperature)) / (Math.PI * coil.innerDiameter * viscosity),
		Pr: prandtl(fluid, temperature),
	};
}

function prandtl(fluid: Fluid, temperature: number): number {
	return (fluid.viscosity(temperature) * fluid.heatCapacity(temperature)) / fluid.conductivity(temperature);
}

/** Resistance of the inside film per metre of tube [mK/W]; `beyond` is the resistance outside it, for the wall temperature. */
function insideResistance(
	coil: Coil,
	filmFactor: number,
	fluid: Fluid,
	temperature: number,
	flow: number,
	waterTemperature: number,
	beyond: number,
): number {
	const perNusselt = 1 / (Math.PI * fluid.conductivity(temperature) * filmFactor);
	if (flow === 0) return perNusselt / NUSSELT_LAMINAR;
	const { Re, Pr } = coilFlow(coil, fluid, temperature, flow);
	const uncorrected = nusseltHelical(Re, Pr, coil.innerDiameter / coil.coilDiameter);
	const film = perNusselt / uncorrected;
	const wallTemperature = temperature + ((waterTemperature - temperature) * film) / (film + beyond);
	const corrected = uncorrected * wallPropertyFactor(Pr, prandtl(fluid, wallTemperature));
	return perNusselt / Math.max(NUSSELT_LAMINAR, corrected);
}

/** Resistance of the outside film per metre of tube [mK/W], from a guess. */
function outsideResistance(
	coil: Coil,
	within: number,
	guess: number,
	oilTemperature: number,
	waterTemperature: number,
): number {
	const drive = oilTemperature - waterTemperature;
	const film = waterTemperature + ((drive / 2) * guess) / (within + guess);
	const conductivity = water.conductivity(film);
	const viscosity = water.viscosity(film);
	const density = water.density(film);
	const capacity = water.heatCapacity(film);
	const rayleighPerKelvin =
		(GRAVITY * Math.abs(waterExpansion(film)) * density * density * capacity * cube(coil.outerDiameter)) /
		(viscosity * conductivity);
	const Pr = (viscosity * capacity) / conductivity;
	let outside = guess;
	for (let pass = 0; pass < PASSES; pass++) {
		const excess = (drive * outside) / (within + outside);
		const difference = Math.sqrt(excess * excess + LEAST_DIFFERENCE * LEAST_DIFFERENCE);
		const Nu = nusseltHorizontalCylinder(rayleighPerKelvin * difference, Pr);
		outside = 1 / (Math.PI * Nu * conductivity);
	}
	return outside;
}

/** Whether the inside film of the coil is outside its measured range. The range of the outside film (Ra ≤ 10¹²) is enforced. */
export function coilFilmOutsideRange(
	coil: Coil,
	fluid: Fluid,
	oilTemperature: number,
	flow: number,
): boolean {
	if (flow === 0) return false;
	const { Re, Pr } = coilFlow(coil, fluid, oilTemperature, flow);
	return helicalOutsideRange(Re, Pr, coil.innerDiameter / coil.coilDiameter);
}
