import { water } from "../fluids/water.ts";
import { boreVolume } from "../loop/bore.ts";
import type { Pipe } from "../loop/loop.ts";
import { type PipeHeatLoss, pipeHeatLoss, pipeHeldHeat } from "../loop/pipe.ts";
import { pipeInsideFilm } from "../loop/pipe-flow.ts";
import { type Duty, enthalpyRise } from "./duty.ts";

/** Air around the pipe. */
export interface PipeAir {
	readonly ambient: number; // [K]
	readonly wind: number; // [m/s]
	readonly pressure: number; // of the air [Pa]
}

const MOST_REYNOLDS = 5e6; // [-] upper end of the film correlation; a search can exceed it, where the film no longer matters

/** Heat loss of the complete pipe per kelvin of its water above the air [W/K].
 *  @param massFlow  of water [kg/s]; 0 for the lower bound at any flow
 *  @param mean      temperature of the water in it [K] */
export function pipeConductance(pipe: Pipe, massFlow: number, mean: number, air: PipeAir): number {
	return pipe.length === 0 ? 0 : lossOfMetre(pipe, massFlow, mean, air).coefficientPerMetre * pipe.length;
}

/** Surface temperature of a pipe while water runs [K]; as `pipeConductance`. */
export function pipeSurfaceTemperature(pipe: Pipe, massFlow: number, mean: number, air: PipeAir): number {
	return lossOfMetre(pipe, massFlow, mean, air).surfaceTemperature;
}

function lossOfMetre(
	pipe: Pipe,
	massFlow: number,
	mean: number,
	{ ambient, wind, pressure }: PipeAir,
): PipeHeatLoss {
	const greatest = (MOST_REYNOLDS * Math.PI * pipe.innerDiameter * water.viscosity(mean)) / 4; // [kg/s]
	const insideFilm = pipeInsideFilm(pipe, water, mean, Math.min(massFlow, greatest) / water.density(mean));
	return pipeHeatLoss(pipe, { fluidTemperature: mean, insideFilm, ambient, wind, pressure });
}

/** Temperature at which a flow must leave the receiver to arrive at the tap at the wanted temperature [K].
 *  T − T_air = (T_wanted − T_air)·e^(K/ṁcp)
 *  @param massFlow  [kg/s], above 0     @param conductance  K of the pipe [W/K]
 *  Error    heat capacity as the mean from cold to wanted: 0.1 % of the drop, 2 % where it is 60 K */
export function leavingForFlow(
	conductance: number,
	massFlow: number,
	duty: Pick<Duty, "cold" | "wanted">,
	ambient: number,
): number {
	const heatCapacity = enthalpyRise(duty) / (duty.wanted - duty.cold);
	return ambient + (duty.wanted - ambient) * Math.exp(conductance / (massFlow * heatCapacity));
}

const PASSES = 3; // each reduces the error to a hundredth

/** The same along a pipe, with its loss at the mean temperature of both ends.
 *  @returns  at or above the boiling point where the water would be steam; the value is then not exact */
export function leavingAlong(pipe: Pipe, massFlow: number, duty: Duty, air: PipeAir): number {
	let leaving = duty.wanted;
	for (let pass = 0; pass < PASSES; pass++) {
		const mean = (leaving + duty.wanted) / 2;
		leaving = leavingForFlow(pipeConductance(pipe, massFlow, mean, air), massFlow, duty, air.ambient);
		if (leaving >= duty.boiling) break; // steam, which the pipe does not carry
	}
	return leaving;
}

const MOST_STEPS = 30;
const TOLERANCE = 1e-6; // [K]

/** The same for a known power to the water, from which the flow follows, ṁ·cp·(T − T_cold) = P: the lower of
 *  two solutions; at the higher one the flow is so small that it loses nearly all of its heat in the pipe.
 *  T = T_air + (T_wanted − T_air)·e^(K·(T − T_cold)/P), by Newton's method, which converges from one side
 *  @param power  P [W]
 *  @returns  undefined without a solution: a hotter, smaller flow would lose even more */
export function leavingForPower(
	conductance: number,
	power: number,
	{ cold, wanted }: Pick<Duty, "cold" | "wanted">,
	ambient: number,
): number | undefined {
	if (!(power > 0)) return undefined;
	const rate = conductance / power;
	let leaving = wanted;
	for (let i = 0; i < MOST_STEPS; i++) {
		const over = (wanted - ambient) * Math.exp(rate * (leaving - cold));
		const slope = 1 - rate * over;
		if (!(slope > 0)) return undefined;
		const step = (ambient + over - leaving) / slope;
		leaving += step;
		if (Math.abs(step) <= TOLERANCE) return leaving;
	}
	return undefined;
}

/** Water at feed temperature that runs from the tap before hot water arrives [kg]: the mass that carries the heat that water
 *  and metal of the hot pipe contain.
 *  Assumes  a cold pipe and a hot receiver at the start; hot water displaces the cold water without mixing and heats the pipe
 *           on its way; the heat of the insulation is neglected */
export function massUntilHot(pipe: Pipe, { cold, wanted }: Pick<Duty, "cold" | "wanted">): number {
	const held = pipeHeldHeat(pipe, water, (cold + wanted) / 2);
	return boreVolume(pipe) * water.density(cold) * (1 + held.metal / held.fluid);
}
