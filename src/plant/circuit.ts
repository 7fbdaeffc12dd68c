import type { Fluid } from "../fluids/fluid.ts";
import { circuitPressureDrop, type Segment } from "../loop/flow.ts";
import { pipeSegment } from "../loop/pipe-flow.ts";
import { type PumpDuty, pumpDuty } from "../loop/pump.ts";
import { woundDiameter } from "../receiver/film.ts";
import { hasTube } from "../receiver/receiver.ts";
import { COIL, RECEIVER, RETURN, SUPPLY } from "./nodes.ts";
import type { Plant } from "./plant.ts";

const DRAWN_TUBE_ROUGHNESS = 1.5e-6; // [m] drawn tube, Moody 1944 (1.52e-6 in the open library fluids)

/** Duty of the pump at the temperatures of the lumps [4]: cold oil is viscous and limits the flow. */
export function circuitDuty(plant: Plant, temperatures: Float64Array): PumpDuty {
	const { loop, receiver, coil } = plant;
	const { fluid } = loop;
	const segments: [Segment, ...Segment[]] = [
		pipeSegment(loop.supply, fluid, temperatures[SUPPLY]!),
		tubeSegment(coil, coil.coilDiameter, fluid, temperatures[COIL]!),
		pipeSegment(loop.return, fluid, temperatures[RETURN]!),
	];
	if (hasTube(receiver))
		segments.push(tubeSegment(receiver.tube, woundDiameter(receiver), fluid, temperatures[RECEIVER]!));
	return pumpDuty(loop.pump, (flow) => circuitPressureDrop(segments, loop.fittingsLossFactor, flow));
}

/** A helical tube filled with fluid of one temperature [K], as a segment of the circuit. */
function tubeSegment(
	tube: { readonly innerDiameter: number; readonly length: number },
	helixDiameter: number,
	fluid: Fluid,
	temperature: number,
): Segment {
	return {
		length: tube.length,
		innerDiameter: tube.innerDiameter,
		roughness: DRAWN_TUBE_ROUGHNESS,
		helixRatio: tube.innerDiameter / helixDiameter,
		density: fluid.density(temperature),
		viscosity: fluid.viscosity(temperature),
	};
}
