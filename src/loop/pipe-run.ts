import type { Fluid } from "../fluids/fluid.ts";
import { effectivenessUniform } from "../heat/exchanger.ts";
import { fixedPoint } from "../numeric/fixed-point.ts";
import { meanVelocity, type Regime, regime, segmentPressureDrop, segmentReynolds } from "./flow.ts";
import type { Pipe } from "./loop.ts";
import { type PipeHeatLoss, pipeHeatLoss } from "./pipe.ts";
import { pipeInsideFilm, pipeSegment } from "./pipe-flow.ts";

const OUTLET_TOLERANCE = 1e-7; // [K] for four digits in the heat loss of a well-insulated metre

/** Flow through a pipe, and its surroundings. */
export interface RunConditions {
	readonly inletTemperature: number; // [K]
	readonly flow: number; // volume flow at the inlet, above 0 [m³/s]
	readonly ambient: number; // [K]
	readonly wind: number; // [m/s]
	readonly pressure: number; // of the air [Pa]
}

/** A pipe in steady flow from end to end. */
export interface PipeRun {
	readonly outletTemperature: number; // [K]
	readonly temperatureDrop: number; // [K]
	readonly meanTemperature: number; // of both ends, at which loss per metre and properties are evaluated [K]
	readonly heatLoss: number; // of the complete length [W]
	readonly loss: PipeHeatLoss; // per metre, at the mean temperature
	readonly insideFilm: number; // [W/m²K]
	readonly velocity: number; // mean over the cross-section [m/s]
	readonly Reynolds: number; // [-]
	readonly regime: Regime;
	readonly pressureDrop: number; // [Pa]
}

/** Steady cooling of the fluid along a pipe: T approaches ambient as e^(−UL/ṁcp), with U and properties at the mean of both ends.
 *  @param pipe,fluid  the pipe and its fluid     @param conditions  flow at the inlet, and weather
 *  Error    that of the loss per metre; properties at the mean add less than 0.1 % for drops below 10 K */
export function pipeRun(pipe: Pipe, fluid: Fluid, conditions: RunConditions): PipeRun {
	const { inletTemperature, flow, ambient, wind, pressure } = conditions;
	const massFlow = flow * fluid.density(inletTemperature);
	const filmAt = (temperature: number) => pipeInsideFilm(pipe, fluid, temperature, flow);
	const lossAt = (fluidTemperature: number) =>
		pipeHeatLoss(pipe, { fluidTemperature, insideFilm: filmAt(fluidTemperature), ambient, wind, pressure });
	const dropAt = (mean: number): number => {
		const ntu = (lossAt(mean).coefficientPerMetre * pipe.length) / (massFlow * fluid.heatCapacity(mean));
		return (inletTemperature - ambient) * effectivenessUniform(ntu);
	};
	const nextDrop = (drop: number): number => dropAt(inletTemperature - drop / 2);
	const temperatureDrop = fixedPoint(nextDrop, 0, 0, inletTemperature - ambient, OUTLET_TOLERANCE);
	const mean = inletTemperature - temperatureDrop / 2;
	const segment = pipeSegment(pipe, fluid, mean);
	const Reynolds = segmentReynolds(segment, flow);
	return {
		outletTemperature: inletTemperature - temperatureDrop,
		temperatureDrop,
		meanTemperature: mean,
		heatLoss: massFlow * fluid.heatCapacity(mean) * temperatureDrop,
		loss: lossAt(mean),
		insideFilm: filmAt(mean),
		velocity: meanVelocity(flow, pipe.innerDiameter),
		Reynolds,
		regime: regime(Reynolds),
		pressureDrop: segmentPressureDrop(segment, flow),
	};
}
