import {
	bestApertureDiameter,
	type Dish as CoreDish,
	type Receiver as CoreReceiver,
	type TubeReceiver as CoreTubeReceiver,
	proportionedReceiver,
	standardPressure,
} from "../../src/index.ts";
import type { Fill } from "../assumed.ts";
import { toSi } from "../units.ts";
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

/** The receiver as the core wants it, what was left out of its size filled in by proportion.
 *  @param elevation  of the site [m] */
export function coreReceiver(
	receiver: Receiver,
	dish: CoreDish,
	elevation: number,
	fill: Fill,
): CoreReceiver {
	if (receiver.kind === "efficiencyLine")
		return {
			kind: "efficiencyLine",
			opticalEfficiency: receiver.opticalEfficiency,
			lossCoefficient: receiver.lossCoefficientWPerK,
			heldHeatCapacity: toSi.kilojoules(receiver.heldHeatKjPerK),
		};
	const unsized = unsizedReceiver(receiver);
	const aperture =
		receiver.apertureDiameterM === "auto"
			? bestApertureDiameter(dish, unsized, { ...DUTY, pressure: standardPressure(elevation) })
			: receiver.apertureDiameterM;
	return withGivenSizes(receiver, proportionedReceiver(unsized, aperture), fill);
}

/** Surfaces, tube and lagging; the sizes are placeholders that `proportionedReceiver` replaces. */
function unsizedReceiver(receiver: TubeReceiver): CoreTubeReceiver {
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
	if (receiver.kind === "cavity") return { kind: "cavity", ...common, innerDiameter: 1, depth: 1 };
	if (receiver.kind === "openCoil") return { kind: "openCoil", ...common };
	return {
		kind: "glazedCoil",
		...common,
		coverTransmittance: receiver.coverTransmittance,
		coverGap: toSi.millimetres(receiver.coverGapMm),
	};
}

/** The sizes that the caller gave put back; each of the others is noted as filled in. */
function withGivenSizes(receiver: TubeReceiver, sized: CoreTubeReceiver, fill: Fill): CoreTubeReceiver {
	const length =
		receiver.tube.lengthM ??
		fill(
			"/receiver/tube/lengthM",
			sized.tube.length,
			"as much tube as covers the absorber, turn against turn",
		);
	const tube = { ...sized.tube, length };
	if (receiver.kind !== "cavity" || sized.kind !== "cavity") return { ...sized, tube };
	return {
		...sized,
		tube,
		innerDiameter:
			receiver.innerDiameterM ??
			fill("/receiver/innerDiameterM", sized.innerDiameter, "by proportion to the aperture"),
		depth: receiver.depthM ?? fill("/receiver/depthM", sized.depth, "by proportion to the aperture"),
	};
}
