import type { Fluid } from "../fluids/fluid.ts";
import { filmLimitedReceiver } from "../receiver/film-limited.ts";
import { type CavityReceiver, hasCavity, type TubeReceiver } from "../receiver/receiver.ts";
import { type Designed, statedOr } from "./assumption.ts";
import { derived, practice } from "./grounds.ts";
import type { SparseCavity, SparseTubeReceiver } from "./sparse-receiver.ts";

/** The light and air that a receiver with its fluid must withstand. */
interface Exposure {
	readonly light: number; // entering the receiver, over the beam [m²]
	readonly fluid: Fluid;
	readonly pressure: number; // of the air [Pa]
}

// The worst case for an absorber: full sun on fluid at rest, before the pump starts on a half-warm tank.
// Common practice, no source.
const REST_IN_SUN = {
	beam: 1000, // [W/m²]
	fluidTemperature: 333.15, // [K]
	ambient: 293.15, // [K]
	wind: 0, // [m/s]
	altitude: Math.PI / 4, // of the sun [rad]
	flow: 0, // [m³/s]
};
const FILM_MARGIN = 20; // [K] below the fluid's film limit; common practice, no source

/** A receiver grown, if need be, until fluid at rest in full sun does not char; then with the sizes that were stated.
 *  @param sized  as proportioned to its aperture */
export function receiverBearingSun(
	receiver: SparseTubeReceiver,
	sized: TubeReceiver,
	{ light, fluid, pressure }: Exposure,
): Designed<TubeReceiver> {
	const limit = fluid.limits.film.temperature - FILM_MARGIN;
	const duty = { ...REST_IN_SUN, fluid, pressure, absorbed: REST_IN_SUN.beam * light };
	const free = hasCavity(receiver) || receiver.apertureDiameter === "auto"; // a disc of stated size cannot grow
	const grown = free ? filmLimitedReceiver(sized, duty, limit) : sized;
	if (hasCavity(receiver) && hasCavity(grown)) return withStatedCavity(receiver, grown);
	return withStatedTube(receiver, grown, grown.tube.length);
}

function withStatedCavity(receiver: SparseCavity, grown: CavityReceiver): Designed<TubeReceiver> {
	const inner = statedOr(
		receiver.innerDiameter,
		"receiver.innerDiameter",
		grown.innerDiameter,
		practice("1.3 times the aperture, or as wide as keeps fluid at rest in full sun from charring"),
	);
	const deep = statedOr(receiver.depth, "receiver.depth", inner.design, practice("as deep as wide"));
	const [innerDiameter, depth] = [inner.design, deep.design];
	const wall = Math.PI * innerDiameter * (depth + innerDiameter / 4); // cylinder and back [m²]
	const interior = { ...grown, innerDiameter, depth };
	const { design, assumed } = withStatedTube(receiver, interior, wall / grown.tube.outerDiameter);
	return { design, assumed: [...inner.assumed, ...deep.assumed, ...assumed] };
}

/** @param covering  length of tube that covers the absorber [m] */
function withStatedTube(
	receiver: SparseTubeReceiver,
	grown: TubeReceiver,
	covering: number,
): Designed<TubeReceiver> {
	const { design: length, assumed } = statedOr(
		receiver.tube.length,
		"receiver.tube.length",
		covering,
		derived("as much tube as covers the absorber, turn against turn"),
	);
	return { design: { ...grown, tube: { ...grown.tube, length } }, assumed };
}
