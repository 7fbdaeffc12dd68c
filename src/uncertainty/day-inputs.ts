import { lightCone } from "../dish/light-cone.ts";
import { dishOptics } from "../dish/optics.ts";
import { receiverAbsorptance } from "../receiver/absorption.ts";
import { hasTube } from "../receiver/receiver.ts";
import { declination } from "../sun/position.ts";
import type { DayCase, DaySky } from "./day-case.ts";
import { CHANGES } from "./day-changes.ts";
import type { DaySpreads } from "./day-spreads.ts";
import type { UncertainInput } from "./question.ts";

export interface DayInput extends UncertainInput<DayCase> {
	readonly name: keyof DaySpreads;
}

const MIRROR = ["reflectance", "cleanliness", "slopeError", "absorptance"] as const;
const MEASURED_DISH = ["opticalEfficiency", "lossCoefficient"] as const;
const EVERYWHERE = [
	"coilFilm",
	"laggingLoss",
	"tankLoss",
	"pumpFlow",
	"ambient",
	"wind",
	"coldWater",
] as const;
const OPTICAL: readonly (keyof DaySpreads)[] = [...MIRROR, "opticalEfficiency"];

/** Inputs to which the day responds linearly rather than logarithmically: heat losses are proportional to them. */
const LOSSES: Readonly<Partial<Record<keyof DaySpreads, (of: DayCase) => number>>> = {
	receiverConvection: ({ factors }) => factors.receiverConvection,
	laggingLoss: ({ factors }) => factors.laggingLoss,
	tankLoss: ({ factors }) => factors.tankLoss,
	lossCoefficient: ({ plant: { receiver } }) => (hasTube(receiver) ? 0 : receiver.lossCoefficient),
};

/** The inputs of a case that have a spread. Inputs that only change the absorbed light act through that quantity, so that one simulation
 *  covers all of them: a sky and ten inputs need at most eleven simulations in addition to the two for second-order effects. */
export function dayInputs({ plant, sky }: DayCase, spreads: DaySpreads): readonly DayInput[] {
	const names: readonly (keyof DaySpreads)[] = [
		beamInput(sky.kind),
		...(hasTube(plant.receiver) ? ([...MIRROR, "receiverConvection"] as const) : MEASURED_DISH),
		...EVERYWHERE,
	];
	return names
		.filter((name) => spreads[name] > 0)
		.map((name) => ({
			name,
			at: (stated, score) => CHANGES[name](stated, spreads[name], score),
			through: OPTICAL.includes(name) ? absorbedLight : LOSSES[name],
		}));
}

/** The uncertain input of the beam. */
export function beamInput(sky: DaySky["kind"]): "turbidity" | "measuredBeam" {
	switch (sky) {
		case "clear":
			return "turbidity";
		case "measured":
			return "measuredBeam";
		default:
			return sky satisfies never;
	}
}

/** Logarithm of the share of the beam that is absorbed, in which the effects of mirror, spillage and surface are additive. */
function absorbedLight({ plant: { dish, receiver, site }, task }: DayCase): number {
	if (!hasTube(receiver)) return Math.log(receiver.opticalEfficiency);
	const sun = declination((task.start + task.end) / 2);
	const { shares } = dishOptics(dish, receiver.apertureDiameter, site.latitude, sun);
	return Math.log(shares.toReceiver * receiverAbsorptance(receiver, lightCone(dish)));
}
