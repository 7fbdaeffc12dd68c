import { lightCone } from "../dish/light-cone.ts";
import { dishOptics } from "../dish/optics.ts";
import { receiverAbsorptance } from "../receiver/absorption.ts";
import type { InstantCase } from "./instant-case.ts";
import { INSTANT_CHANGES, type InstantSpreads } from "./instant-changes.ts";
import type { UncertainInput } from "./question.ts";

export interface InstantInput extends UncertainInput<InstantCase> {
	readonly name: keyof InstantSpreads;
}

const MIRROR = ["reflectance", "cleanliness", "slopeError", "absorptance"] as const;
const OPTICAL: readonly (keyof InstantSpreads)[] = [...MIRROR, "opticalEfficiency"];

/** The inputs of a case that have a spread; a beam that was stated has none. */
export function instantInputs(of: InstantCase, spreads: InstantSpreads): readonly InstantInput[] {
	const names: readonly (keyof InstantSpreads)[] = [
		...beamInputs(of),
		...(of.receiver.kind === "efficiencyLine"
			? (["opticalEfficiency", "lossCoefficient"] as const)
			: ([...MIRROR, "receiverConvection"] as const)),
		...arrangementInputs(of),
		"ambient",
		"wind",
		"coldWater",
	];
	return names
		.filter((name) => spreads[name] > 0)
		.map((name) => ({
			name,
			at: (stated, score) => INSTANT_CHANGES[name](stated, spreads[name], score),
			through: OPTICAL.includes(name) ? absorbedShare : undefined,
		}));
}

function arrangementInputs({ arrangement }: InstantCase): readonly (keyof InstantSpreads)[] {
	if (arrangement.kind === "vessel") return ["coilTransfer", "tankLoss", "pumpFlow"];
	return arrangement.outlet.length > 0 ? ["laggingLoss"] : [];
}

function beamInputs({ beam }: InstantCase): readonly ("turbidity" | "measuredBeam")[] {
	if (beam.kind === "stated") return [];
	return [beam.kind === "clear" ? "turbidity" : "measuredBeam"];
}

/** Logarithm of the share of the beam that the absorber takes up. */
function absorbedShare({ dish, receiver, latitude, declination }: InstantCase): number {
	if (receiver.kind === "efficiencyLine") return Math.log(receiver.opticalEfficiency);
	const { shares } = dishOptics(dish, receiver.apertureDiameter, latitude, declination);
	return Math.log(shares.toReceiver * receiverAbsorptance(receiver, lightCone(dish)));
}
