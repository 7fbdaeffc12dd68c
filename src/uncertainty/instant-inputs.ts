import { lightCone } from "../dish/light-cone.ts";
import { dishOptics } from "../dish/optics.ts";
import { receiverAbsorptance } from "../receiver/absorption.ts";
import { hasTube } from "../receiver/receiver.ts";
import { beamInput } from "./day-inputs.ts";
import type { InstantCase } from "./instant-case.ts";
import { INSTANT_CHANGES, type InstantSpreads } from "./instant-changes.ts";
import type { UncertainInput } from "./question.ts";

export interface InstantInput extends UncertainInput<InstantCase> {
	readonly name: keyof InstantSpreads;
}

const MIRROR = ["reflectance", "cleanliness", "slopeError", "absorptance"] as const;
const OPTICAL: readonly (keyof InstantSpreads)[] = [...MIRROR, "opticalEfficiency"];

/** The inputs of a case that have a spread; a stated beam has none. */
export function instantInputs(of: InstantCase, spreads: InstantSpreads): readonly InstantInput[] {
	const names: readonly (keyof InstantSpreads)[] = [
		...beamInputs(of),
		...(hasTube(of.receiver)
			? ([...MIRROR, "receiverConvection"] as const)
			: (["opticalEfficiency", "lossCoefficient"] as const)),
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
	switch (arrangement.kind) {
		case "vessel":
			return ["coilTransfer", "tankLoss", "pumpFlow"];
		case "direct":
			return arrangement.outlet.length > 0 ? ["laggingLoss"] : [];
		default:
			return arrangement satisfies never;
	}
}

function beamInputs({ beam }: InstantCase): readonly ("turbidity" | "measuredBeam")[] {
	switch (beam.kind) {
		case "stated":
			return [];
		case "clear":
		case "measured":
			return [beamInput(beam.kind)];
		default:
			return beam satisfies never;
	}
}

/** Logarithm of the share of the beam that is absorbed. */
function absorbedShare({ dish, receiver, latitude, declination }: InstantCase): number {
	if (!hasTube(receiver)) return Math.log(receiver.opticalEfficiency);
	const { shares } = dishOptics(dish, receiver.apertureDiameter, latitude, declination);
	return Math.log(shares.toReceiver * receiverAbsorptance(receiver, lightCone(dish)));
}
