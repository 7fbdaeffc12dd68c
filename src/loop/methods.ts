import { fluidMethods } from "../fluids/methods.ts";
import {
	CROSS_FLOW,
	HORIZONTAL_TUBE,
	insulationMethod,
	moistureMethod,
	STRAIGHT_FILM,
} from "../heat/methods.ts";
import { inRange, type Method } from "../methods.ts";
import type { ColdStart } from "./cold-start.ts";
import type { Loop, Pipe } from "./loop.ts";
import type { LoopConditions, LoopLosses, RunLosses } from "./losses.ts";

const MOST_PRANDTL = 2000; // [-] upper end of Gnielinski's data
const LEAST_PECLET = 0.2; // [-] Re·Pr of the wind, Churchill & Bernstein
const DIFFUSIVITY_OF_AIR = 2.2e-5; // [m²/s] at 20 °C, Incropera 6e, table A.4

/** Methods behind the losses of a loop, each with a flag where it is used outside its published range.
 *  @param wet  whether wet insulation is evaluated too */
export function loopMethods(
	loop: Loop,
	conditions: LoopConditions,
	losses: LoopLosses,
	starts: readonly ColdStart[],
	wet: boolean,
): readonly Method[] {
	const runs = [
		["Supply pipe", loop.supply, losses.supply],
		["Return pipe", loop.return, losses.return],
	] as const;
	const transitional = [losses.supply, losses.return, ...starts].some(
		({ regime }) => regime === "transitional",
	);
	const damp = wet || runs.some(([, pipe]) => pipe.insulation.moisture > 0);
	return [
		{
			name: "Friction in tubes of any regime",
			source: `Churchill, Chemical Engineering 84 (1977) 91–92${conditions.others.some(({ helixRatio }) => helixRatio > 0) ? "; coils: White, Proc. R. Soc. A 123 (1929) 645–663" : ""}`,
			confirmed: true,
			outsideRange: transitional,
		},
		{
			name: "Film inside a straight tube",
			...STRAIGHT_FILM,
			outsideRange: runs.some(([, , run]) => filmOutsideRange(loop, run)),
		},
		...outsideMethods(runs[0][1], conditions),
		...runs.flatMap(([place, pipe, run]) => pipeInsulation(place, pipe, run)),
		...(damp ? [moistureMethod(runs.map(([, , run]) => run.meanTemperature))] : []),
		...fluidMethods(loop.fluid, [
			conditions.supplyTemperature,
			conditions.returnTemperature,
			...starts.map(({ temperature }) => temperature),
		]),
	];
}

function filmOutsideRange({ fluid }: Loop, { regime, meanTemperature: t }: RunLosses): boolean {
	const Pr = (fluid.viscosity(t) * fluid.heatCapacity(t)) / fluid.conductivity(t);
	return regime === "transitional" || (regime === "turbulent" && Pr > MOST_PRANDTL);
}

function outsideMethods(pipe: Pipe, { wind }: LoopConditions): Method[] {
	const diameter = pipe.outerDiameter + 2 * pipe.insulation.thickness;
	const Peclet = (wind * diameter) / DIFFUSIVITY_OF_AIR;
	return [inRange(HORIZONTAL_TUBE), { ...CROSS_FLOW, outsideRange: wind > 0 && Peclet < LEAST_PECLET }];
}

function pipeInsulation(place: string, pipe: Pipe, { loss, meanTemperature }: RunLosses): Method[] {
	if (pipe.insulation.thickness === 0) return [];
	const hotFace = meanTemperature - loss.perMetre * (loss.insideResistance + loss.wallResistance);
	return [insulationMethod(place, pipe.insulation, hotFace, loss.surfaceTemperature)];
}
