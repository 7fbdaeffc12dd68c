import {
	absorberWidth,
	bestApertureDiameter,
	type Dish as CoreDish,
	type Receiver as CoreReceiver,
	type TubeReceiver as CoreTubeReceiver,
	derived,
	dishOptics,
	type Fluid,
	filmLimitedReceiver,
	hasHollow,
	hasTube,
	narrowestAbsorber,
	practice,
	proportionedReceiver,
	standardPressure,
} from "../../src/index.ts";
import type { Fill } from "../wire/defaults.ts";
import { toSi } from "../wire/units.ts";
import { coreInsulation } from "./insulation.ts";
import type { Receiver, TubeReceiver } from "./receiver.ts";

// The point at which an aperture is chosen: the middle of a working day. Common practice, no source.
const DUTY = {
	beam: 800, // [W/m²]
	fluidTemperature: toSi.celsius(80),
	ambient: toSi.celsius(20),
	wind: 2, // [m/s]
	altitude: toSi.degrees(45), // of the sun
};

// The hardest that an absorber must bear: full sun on fluid at rest, before the pump starts on a half-warm tank.
// Common practice, no source.
const REST_IN_SUN = {
	beam: 1000, // [W/m²]
	fluidTemperature: toSi.celsius(60),
	ambient: toSi.celsius(20),
	wind: 0, // [m/s]
	altitude: toSi.degrees(45), // of the sun
	flow: 0, // [m³/s]
};
const FILM_MARGIN = 20; // [K] below the fluid's film limit; common practice, no source

/** The receiver as the core wants it, what was left out of its size worked out for its dish and fluid.
 *  @param elevation  of the site [m] */
export function coreReceiver(
	receiver: Receiver,
	dish: CoreDish,
	fluid: Fluid,
	elevation: number,
	fill: Fill,
): CoreReceiver {
	if (!hasTube(receiver)) return efficiencyLine(receiver);
	const pressure = standardPressure(elevation);
	const unsized = unsizedReceiver(receiver);
	const given = receiver.apertureDiameterM;
	const aperture =
		given === "auto"
			? Math.min(
					windable(unsized, bestApertureDiameter(dish, unsized, { ...DUTY, pressure })),
					hollowGiven(receiver),
				) // the trade has one summit
			: given;
	const optics = dishOptics(dish, aperture, 0, 0);
	const light = optics.apertureArea * optics.shares.toReceiver;
	return sizedReceiver(receiver, proportionedReceiver(unsized, aperture), light, fluid, pressure, fill);
}

/** The same for a receiver of given aperture in light of any source.
 *  @param light  entering it, over the beam [m²] */
export function coreReceiverInLight(
	receiver: Receiver,
	light: number,
	fluid: Fluid,
	elevation: number,
	fill: Fill,
): CoreReceiver {
	if (!hasTube(receiver)) return efficiencyLine(receiver);
	const sized = proportionedReceiver(unsizedReceiver(receiver), receiver.apertureDiameterM as number);
	return sizedReceiver(receiver, sized, light, fluid, standardPressure(elevation), fill);
}

/** An aperture [m], or a wider one where the tube could not be wound to the absorber that goes with it. */
function windable(unsized: CoreTubeReceiver, aperture: number): number {
	return Math.max(aperture, narrowestAbsorber(unsized) / absorberWidth(proportionedReceiver(unsized, 1)));
}

/** The widest that an opening into a hollow of given size can be [m]. */
function hollowGiven(receiver: TubeReceiver): number {
	return (hasHollow(receiver) ? receiver.innerDiameterM : undefined) ?? Number.POSITIVE_INFINITY;
}

function efficiencyLine(receiver: Extract<Receiver, { kind: "efficiencyLine" }>): CoreReceiver {
	return {
		kind: "efficiencyLine",
		opticalEfficiency: receiver.opticalEfficiency,
		lossCoefficient: receiver.lossCoefficientWPerK,
		heldHeatCapacity: toSi.kilojoules(receiver.heldHeatKjPerK),
	};
}

/** Grown, if need be, until the film of fluid at rest in full sun stays below its limit, the light taken as spread evenly over the
 *  absorber; then with the sizes that the caller gave. Where light falls on a spot, as in a focus on a disc, this protects nothing.
 *  @param light  entering it, over the beam [m²] */
function sizedReceiver(
	receiver: TubeReceiver,
	sized: CoreTubeReceiver,
	light: number,
	fluid: Fluid,
	pressure: number,
	fill: Fill,
): CoreTubeReceiver {
	const limit = fluid.limits.film.temperature - FILM_MARGIN;
	const duty = { ...REST_IN_SUN, fluid, pressure, absorbed: REST_IN_SUN.beam * light };
	const free = hasHollow(receiver) || receiver.apertureDiameterM === "auto"; // a disc of given size cannot grow
	return withGivenSizes(receiver, free ? filmLimitedReceiver(sized, duty, limit) : sized, fill);
}

/** Surfaces, tube and lagging; the sizes are placeholders that `proportionedReceiver` replaces. */
export function unsizedReceiver(receiver: TubeReceiver): CoreTubeReceiver {
	const common = {
		apertureDiameter: 1,
		absorptance: receiver.absorptance,
		emittance: receiver.emittance,
		insulation: coreInsulation(receiver.insulation),
		tube: {
			innerDiameter: toSi.millimetres(receiver.tube.innerDiameterMm),
			outerDiameter: toSi.millimetres(receiver.tube.outerDiameterMm),
			length: 1,
		},
	};
	switch (receiver.kind) {
		case "cavity":
			return { kind: "cavity", ...common, innerDiameter: 1, depth: 1 };
		case "openCoil":
			return { kind: "openCoil", ...common };
		case "glazedCoil":
			return {
				kind: "glazedCoil",
				...common,
				coverTransmittance: receiver.coverTransmittance,
				coverGap: toSi.millimetres(receiver.coverGapMm),
			};
		default:
			return receiver satisfies never;
	}
}

const WHY_SIZE = practice(
	"1.3 apertures, or as much as keeps the film of fluid at rest in full sun below its limit in evenly spread light",
);
const WHY_DEPTH = practice("as deep as wide");
const WHY_LENGTH = derived("as much tube as covers the absorber, turn against turn");

/** The sizes that the caller gave put back, what hangs on them made to follow; each of the others is noted as filled in. */
function withGivenSizes(receiver: TubeReceiver, sized: CoreTubeReceiver, fill: Fill): CoreTubeReceiver {
	const fillLength = (length: number) =>
		receiver.tube.lengthM ?? fill("/receiver/tube/lengthM", length, WHY_LENGTH);
	if (!hasHollow(receiver) || !hasHollow(sized))
		return { ...sized, tube: { ...sized.tube, length: fillLength(sized.tube.length) } };
	const innerDiameter =
		receiver.innerDiameterM ?? fill("/receiver/innerDiameterM", sized.innerDiameter, WHY_SIZE);
	const depth = receiver.depthM ?? fill("/receiver/depthM", innerDiameter, WHY_DEPTH);
	const wall = Math.PI * innerDiameter * (depth + innerDiameter / 4); // cylinder and back [m²]
	const length = fillLength(wall / sized.tube.outerDiameter);
	return { ...sized, innerDiameter, depth, tube: { ...sized.tube, length } };
}
