import { frictionFactorHelical } from "../heat/helical-coil.ts";
import { power } from "../numeric/power.ts";

const LAMINAR_END = 2300; // [-] straight tube, VDI Heat Atlas 2010, ch. G1, sect. 4.2 (quoted in a public copy)
const TURBULENT_START = 4000; // [-] idem
const FULLY_LAMINAR = 1000; // [-] below it Churchill 1977 equals 64/Re to 1e-12

/** A section of tube with fluid of one state: the data for its pressure drop. */
export interface Segment {
	readonly length: number; // [m]
	readonly innerDiameter: number; // [m]
	readonly roughness: number; // [m]
	readonly helixRatio: number; // inner diameter over diameter of the helix, 0 if straight
	readonly density: number; // [kg/m³]
	readonly viscosity: number; // dynamic [Pa s]
}

export type Regime = "laminar" | "transitional" | "turbulent";

/** Regime of flow in a straight tube: laminar below Re 2300, turbulent above 4000. */
export function regime(Re: number): Regime {
	if (Re < LAMINAR_END) return "laminar";
	return Re > TURBULENT_START ? "turbulent" : "transitional";
}

function fourth(x: number): number {
	const square = x * x;
	return square * square;
}

/** Darcy friction factor of a straight tube in every regime (Churchill).
 *  f = 8 [(8/Re)^12 + 1/(A + B)^1.5]^(1/12),  A = {2.457 ln[1/((7/Re)^0.9 + 0.27 ε)]}^16,  B = (37 530/Re)^16
 *  @param Re  Reynolds number on the inner diameter, above 0 [-]     @param relativeRoughness  ε, height over diameter [-]
 *  @returns   f (Darcy, four times Fanning) [-]
 *  Range   Re > 0; ε up to 0.05
 *  Error   within 3.1 % of Colebrook from Re 4000 on; unknown between 2300 and 4000
 *  Source  Churchill, Chemical Engineering 84 (7 Nov. 1977) 91–92
 *  Check   nine points, tests/reference/flow.reference.ts */
export function frictionChurchill(Re: number, relativeRoughness: number): number {
	if (Re < FULLY_LAMINAR) return 64 / Re;
	const A = fourth(fourth(2.457 * Math.log(1 / (power(7 / Re, 0.9) + 0.27 * relativeRoughness))));
	const B = fourth(fourth(37_530 / Re));
	const x4 = fourth(8 / Re);
	const laminar = x4 * x4 * x4;
	const turbulent = 1 / ((A + B) * Math.sqrt(A + B));
	return 8 * Math.sqrt(Math.sqrt(Math.cbrt(laminar + turbulent)));
}

/** Mean speed in a round tube [m/s] of a volume flow [m³/s]. */
export function meanVelocity(flow: number, innerDiameter: number): number {
	return flow / ((Math.PI / 4) * innerDiameter * innerDiameter);
}

/** Reynolds number of a volume flow [m³/s] through a segment. */
export function segmentReynolds(segment: Segment, flow: number): number {
	return (
		(segment.density * meanVelocity(flow, segment.innerDiameter) * segment.innerDiameter) / segment.viscosity
	);
}

/** Darcy friction factor of a segment. That of a helix is at least that of a straight tube, which includes roughness. */
export function segmentFriction(segment: Segment, Re: number): number {
	const straight = frictionChurchill(Re, segment.roughness / segment.innerDiameter);
	if (segment.helixRatio === 0) return straight;
	return Math.max(straight, frictionFactorHelical(Re, segment.helixRatio));
}

/** Pressure drop of a volume flow [m³/s] through a segment by Darcy–Weisbach [Pa]; 0 at rest. */
export function segmentPressureDrop(segment: Segment, flow: number): number {
	if (flow === 0) return 0;
	const friction = segmentFriction(segment, segmentReynolds(segment, flow));
	const velocity = meanVelocity(flow, segment.innerDiameter);
	return ((friction * segment.length) / segment.innerDiameter) * 0.5 * segment.density * velocity * velocity;
}

/** Pressure drop of a closed circuit [Pa]: its segments, and its fittings at the velocity head of the first segment.
 *  Height cancels in a closed loop; the buoyancy of hot against cold fluid, about 100 Pa, is neglected.
 *  @param segments  in flow order, the supply pipe first     @param fittingsLossFactor  Σ ζ [-]
 *  @param flow      volume flow [m³/s] */
export function circuitPressureDrop(
	segments: readonly [Segment, ...Segment[]],
	fittingsLossFactor: number,
	flow: number,
): number {
	const velocity = meanVelocity(flow, segments[0].innerDiameter);
	let pressure = fittingsLossFactor * 0.5 * segments[0].density * velocity * velocity;
	for (const segment of segments) pressure += segmentPressureDrop(segment, flow);
	return pressure;
}
