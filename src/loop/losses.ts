import { DomainError } from "../errors.ts";
import { circuitPressureDrop, type Segment, segmentPressureDrop } from "./flow.ts";
import { type InsulationEffects, type InsulationQuestions, insulationEffects } from "./insulation-effects.ts";
import type { Loop, Pipe } from "./loop.ts";
import { pipeHeldHeat } from "./pipe.ts";
import { pipeSegment } from "./pipe-flow.ts";
import { type PipeRun, pipeRun, type RunConditions } from "./pipe-run.ts";
import { type PumpDuty, pumpDuty } from "./pump.ts";

/** State of a loop for which its losses are computed. */
export interface LoopConditions {
	readonly supplyTemperature: number; // of the fluid leaving the receiver [K]
	readonly returnTemperature: number; // of the fluid leaving the coil [K]
	readonly ambient: number; // [K]
	readonly wind: number; // [m/s]
	readonly pressure: number; // of the air [Pa]
	readonly others: readonly Segment[]; // receiver tube and coil, they matter for the pump only
}

export interface RunLosses extends PipeRun, InsulationEffects {
	readonly heldHeatCapacity: number; // of fluid and metal [J/K]
}

/** Heat losses of a loop in steady operation. */
export interface LoopLosses {
	readonly supply: RunLosses;
	readonly return: RunLosses;
	readonly fittings: { readonly heatLoss: number; readonly pressureDrop: number }; // [W], [Pa]
	readonly others: { readonly pressureDrop: number }; // [Pa]
	readonly pump: PumpDuty & { readonly casingLoss: number }; // [W]
	readonly heatLoss: number; // of all four [W]
	readonly netHeatLoss: number; // minus the heat from the pump [W]
}

function runLosses(
	pipe: Pipe,
	loop: Loop,
	conditions: RunConditions,
	questions: InsulationQuestions,
): RunLosses {
	const run = pipeRun(pipe, loop.fluid, conditions);
	const held = pipeHeldHeat(pipe, loop.fluid, run.meanTemperature);
	const lossWith = (changed: Pipe): number => pipeRun(changed, loop.fluid, conditions).heatLoss;
	return {
		...run,
		...insulationEffects(pipe, run, conditions, questions, lossWith),
		heldHeatCapacity: (held.fluid + held.metal) * pipe.length,
	};
}

/** Steady losses of the whole loop: both pipes, fittings and pump; heat, pressure, electricity.
 *  Fittings have the mean temperature of the ends of both pipes, the casing that of the end of the return pipe. The volume flow is uniform:
 *  the lower density of hot fluid, by a few per cent, is neglected.
 *  @param loop        as built     @param conditions  temperatures, weather and further tubes in the circuit
 *  @param questions   changes of the insulation to evaluate
 *  Range   the pump delivers some flow, else DomainError impossible */
export function loopLosses(
	loop: Loop,
	conditions: LoopConditions,
	questions: InsulationQuestions,
): LoopLosses {
	const { supplyTemperature, returnTemperature, ambient, wind, pressure, others } = conditions;
	const hot = pipeSegment(loop.supply, loop.fluid, supplyTemperature);
	const cold = pipeSegment(loop.return, loop.fluid, returnTemperature);
	const circuit: readonly [Segment, ...Segment[]] = [hot, ...others, cold];
	const duty = pumpDuty(loop.pump, (q) => circuitPressureDrop(circuit, loop.fittingsLossFactor, q));
	if (!(duty.flow > 0))
		throw new DomainError("impossible", "loop.flow", "the pump delivers no flow", { flow: duty.flow });
	const weather = { flow: duty.flow, ambient, wind, pressure };
	const supply = runLosses(loop.supply, loop, { inletTemperature: supplyTemperature, ...weather }, questions);
	const back = runLosses(loop.return, loop, { inletTemperature: returnTemperature, ...weather }, questions);
	const ends = supplyTemperature + supply.outletTemperature + returnTemperature + back.outletTemperature;
	const fittings = loop.fittingsLossCoefficient * (ends / 4 - ambient);
	const casingLoss = loop.pump.casingLossCoefficient * (back.outletTemperature - ambient);
	const heatLoss = supply.heatLoss + back.heatLoss + fittings + casingLoss;
	return {
		supply,
		return: back,
		fittings: {
			heatLoss: fittings,
			pressureDrop: circuitPressureDrop([{ ...hot, length: 0 }], loop.fittingsLossFactor, duty.flow),
		},
		others: {
			pressureDrop: others.reduce((sum, segment) => sum + segmentPressureDrop(segment, duty.flow), 0),
		},
		pump: { ...duty, casingLoss },
		heatLoss,
		netHeatLoss: heatLoss - duty.heatToFluid,
	};
}
