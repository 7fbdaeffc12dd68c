import { DomainError } from "../errors.ts";
import { circuitPressureDrop, type Segment, segmentPressureDrop } from "./flow.ts";
import type { Loop, Pipe } from "./loop.ts";
import { pipeHeldHeat } from "./pipe.ts";
import { pipeSegment } from "./pipe-flow.ts";
import { type PipeRun, pipeRun, type RunConditions } from "./pipe-run.ts";
import { type PumpDuty, pumpDuty } from "./pump.ts";
import { type LaggingAnswers, type LaggingQuestions, laggingAnswers } from "./saving.ts";

/** The state in which a loop's losses are asked for. */
export interface LoopConditions {
	readonly supplyTemperature: number; // of the fluid leaving the receiver [K]
	readonly returnTemperature: number; // of the fluid leaving the coil [K]
	readonly ambient: number; // [K]
	readonly wind: number; // [m/s]
	readonly pressure: number; // of the air [Pa]
	readonly others: readonly Segment[]; // receiver tube and coil, for the pump only
}

export interface RunLosses extends PipeRun, LaggingAnswers {
	readonly heldHeatCapacity: number; // of fluid and metal [J/K]
}

/** Where the heat of a loop goes while it runs steadily. */
export interface LoopLosses {
	readonly supply: RunLosses;
	readonly return: RunLosses;
	readonly fittings: { readonly heatLoss: number; readonly pressureDrop: number }; // [W], [Pa]
	readonly others: { readonly pressureDrop: number }; // [Pa]
	readonly pump: PumpDuty & { readonly casingLoss: number }; // [W]
	readonly heatLoss: number; // of all four [W]
	readonly netHeatLoss: number; // less what the pump puts in [W]
}

function runLosses(
	pipe: Pipe,
	loop: Loop,
	conditions: RunConditions,
	questions: LaggingQuestions,
): RunLosses {
	const run = pipeRun(pipe, loop.fluid, conditions);
	const held = pipeHeldHeat(pipe, loop.fluid, run.meanTemperature);
	const lossWith = (laid: Pipe): number => pipeRun(laid, loop.fluid, conditions).heatLoss;
	return {
		...run,
		...laggingAnswers(pipe, run, conditions, questions, lossWith),
		heldHeatCapacity: (held.fluid + held.metal) * pipe.length,
	};
}

/** Steady losses of the whole loop: both pipes, fittings and pump; heat, pressure, electricity.
 *  Fittings are taken at the mean of both pipes' ends, the casing at the end of the return. One volume flow throughout:
 *  hot fluid is some per cent thinner, which is dropped.
 *  @param loop        as laid     @param conditions  temperatures, weather, and what else the pump drives
 *  @param asked       lagging changed by way of question
 *  Range   the pump gives some flow, else DomainError impossible */
export function loopLosses(loop: Loop, conditions: LoopConditions, questions: LaggingQuestions): LoopLosses {
	const { supplyTemperature, returnTemperature, ambient, wind, pressure, others } = conditions;
	const hot = pipeSegment(loop.supply, loop.fluid, supplyTemperature);
	const cold = pipeSegment(loop.return, loop.fluid, returnTemperature);
	const circuit: readonly [Segment, ...Segment[]] = [hot, ...others, cold];
	const duty = pumpDuty(loop.pump, (q) => circuitPressureDrop(circuit, loop.fittingsLossFactor, q));
	if (!(duty.flow > 0))
		throw new DomainError("impossible", "loop.flow", "the pump gives no flow", { flow: duty.flow });
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
