import { circuitPressureDrop, type Regime, regime, type Segment, segmentReynolds } from "./flow.ts";
import { type FurtherTube, furtherSegment } from "./further-tube.ts";
import type { Loop } from "./loop.ts";
import { pipeSegment } from "./pipe-flow.ts";
import { type PumpDuty, pumpDuty } from "./pump.ts";

/** Duty of a pump that starts on a loop filled with fluid of one temperature. */
export interface ColdStart {
	readonly temperature: number; // [K]
	readonly kinematicViscosity: number; // [m²/s]
	readonly duty: PumpDuty;
	readonly Reynolds: number; // in the supply pipe [-]
	readonly regime: Regime;
}

/** Duty of the pump with the whole circuit at one temperature: cold oil is viscous, and power and head limit the flow.
 *  @param further  tubes in addition to the two pipes     @param temperature  of all the fluid [K]
 *  Error  that of viscosity, 10–30 % in the cold; in laminar flow, the flow at limited power depends on its square root
 *  Check  VG 32 in 20 m of 13 mm, tests/reference/cold-start.reference.ts */
export function coldStart(loop: Loop, further: readonly FurtherTube[], temperature: number): ColdStart {
	const { fluid, supply, fittingsLossFactor, pump } = loop;
	const first = pipeSegment(supply, fluid, temperature);
	const circuit: readonly [Segment, ...Segment[]] = [
		first,
		...further.map((tube) => furtherSegment(tube, fluid, temperature)),
		pipeSegment(loop.return, fluid, temperature),
	];
	const duty = pumpDuty(pump, (flow) => circuitPressureDrop(circuit, fittingsLossFactor, flow));
	const Reynolds = segmentReynolds(first, duty.flow);
	return {
		temperature,
		kinematicViscosity: first.viscosity / first.density,
		duty,
		Reynolds,
		regime: regime(Reynolds),
	};
}
