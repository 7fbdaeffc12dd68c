import type { Fluid } from "../fluids/fluid.ts";
import { nusseltPipe } from "../heat/internal-flow.ts";
import { type Segment, segmentReynolds } from "./flow.ts";
import type { Pipe } from "./loop.ts";

/** A pipe filled with fluid of one temperature [K], as a segment of the circuit. */
export function pipeSegment(pipe: Pipe, fluid: Fluid, temperature: number): Segment {
	return {
		length: pipe.length,
		innerDiameter: pipe.innerDiameter,
		roughness: pipe.roughness,
		helixRatio: 0,
		density: fluid.density(temperature),
		viscosity: fluid.viscosity(temperature),
	};
}

/** Film coefficient on the inner surface of a pipe [W/m²K] at a volume flow [m³/s]; at rest that of developed laminar flow, Nu 3.66.
 *  Free convection inside the pipe is neglected: insulation has ten times the resistance of either film. */
export function pipeInsideFilm(pipe: Pipe, fluid: Fluid, temperature: number, flow: number): number {
	const segment = pipeSegment(pipe, fluid, temperature);
	const conductivity = fluid.conductivity(temperature);
	const Pr = (segment.viscosity * fluid.heatCapacity(temperature)) / conductivity;
	const Nu = nusseltPipe(segmentReynolds(segment, flow), Pr, pipe.innerDiameter / pipe.length);
	return (Nu * conductivity) / pipe.innerDiameter;
}
