import { water } from "../fluids/water.ts";
import { boreVolume } from "../loop/bore.ts";
import type { Pipe } from "../loop/loop.ts";
import { type PipeHeatLoss, pipeHeatLoss, pipeHeldHeat } from "../loop/pipe.ts";
import { pipeInsideFilm } from "../loop/pipe-flow.ts";
import { type Duty, enthalpyRise } from "./duty.ts";

/** Air about the pipe. */
export interface PipeAir {
	readonly ambient: number; // [K]
	readonly wind: number; // [m/s]
	readonly pressure: number; // of the air [Pa]
}

const MOST_REYNOLDS = 5e6; // [-] that the film's correlation reaches; a search for a flow may ask for more, where the film no longer counts

/** Heat that a pipe's whole length loses for each kelvin of its water over the air [W/K].
 *  @param massFlow  of water [kg/s]; 0 for the least that it loses at any flow
 *  @param mean      temperature of the water in it [K] */
export function pipeConductance(pipe: Pipe, massFlow: number, mean: number, air: PipeAir): number {
	return pipe.length === 0 ? 0 : lossOfMetre(pipe, massFlow, mean, air).coefficientPerMetre * pipe.length;
}

/** Temperature of a pipe's outside while water runs [K]; as `pipeConductance`. */
export function pipeSkin(pipe: Pipe, massFlow: number, mean: number, air: PipeAir): number {
	return lossOfMetre(pipe, massFlow, mean, air).surfaceTemperature;
}

function lossOfMetre(
	pipe: Pipe,
	massFlow: number,
	mean: number,
	{ ambient, wind, pressure }: PipeAir,
): PipeHeatLoss {
	const known = (MOST_REYNOLDS * Math.PI * pipe.innerDiameter * water.viscosity(mean)) / 4; // [kg/s]
	const insideFilm = pipeInsideFilm(pipe, water, mean, Math.min(massFlow, known) / water.density(mean));
	return pipeHeatLoss(pipe, { fluidTemperature: mean, insideFilm, ambient, wind, pressure });
}

/** Temperature at which a flow must leave the receiver so as to come to the tap as hot as wanted [K].
 *  T − T_air = (T_wanted − T_air)·e^(K/ṁcp)
 *  @param massFlow  [kg/s], above 0     @param conductance  K of the pipe [W/K]
 *  Error    heat capacity taken as from cold to wanted: 0.1 % of the drop, 2 % where it is 60 K */
export function leavingForFlow(
	conductance: number,
	massFlow: number,
	duty: Pick<Duty, "cold" | "wanted">,
	ambient: number,
): number {
	const heatCapacity = enthalpyRise(duty) / (duty.wanted - duty.cold);
	return ambient + (duty.wanted - ambient) * Math.exp(conductance / (massFlow * heatCapacity));
}

const PASSES = 3; // each leaves a hundredth of the error

/** The same along a pipe, what it loses taken at the mean of both its ends.
 *  @returns  at or above the boiling point where the water would have to be steam, and then no more than that */
export function leavingAlong(pipe: Pipe, massFlow: number, duty: Duty, air: PipeAir): number {
	let leaving = duty.wanted;
	for (let pass = 0; pass < PASSES; pass++) {
		const mean = (leaving + duty.wanted) / 2;
		leaving = leavingForFlow(pipeConductance(pipe, massFlow, mean, air), massFlow, duty, air.ambient);
		if (leaving >= duty.boiling) break; // steam: no pipe carries it
	}
	return leaving;
}

const MOST_STEPS = 30;
const TOLERANCE = 1e-6; // [K]

/** The same where the power that the water takes up is known and the flow follows from it, ṁ·cp·(T − T_cold) = P: the lower of
 *  the two temperatures that do so; at the higher the water creeps and all but loses its heat on the way.
 *  T = T_air + (T_wanted − T_air)·e^(K·(T − T_cold)/P), by Newton's steps, which close in from one side
 *  @param power  P [W]
 *  @returns  undefined where none does: hotter water would creep even slower, and lose still more */
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

/** Water that runs from the tap before hot water comes, cold at the feed's temperature [kg]: as much as carries the heat that the
 *  pipe's water and metal hold once hot.
 *  Assumes  the pipe cold and the receiver hot to begin with; hot water pushes the cold before it unmixed and warms the pipe as it
 *           goes; the insulation's own heat left out */
export function massUntilHot(pipe: Pipe, { cold, wanted }: Pick<Duty, "cold" | "wanted">): number {
	const held = pipeHeldHeat(pipe, water, (cold + wanted) / 2);
	return boreVolume(pipe) * water.density(cold) * (1 + held.metal / held.fluid);
}
