import { AS_CORRELATED, type ModelFactors } from "../plant/factors.ts";
import type { Plant } from "../plant/plant.ts";
import { hasTube, type Receiver } from "../receiver/receiver.ts";

/** A possible cause of a difference between a built plant and its drawing. */
export type Cause = "optics" | "losses" | "tankLoss";

/** Ratio of the built plant to its drawing for each cause. */
export type Departures = Readonly<Record<Cause, number>>;

export const AS_DRAWN: Departures = { optics: 1, losses: 1, tankLoss: 1 };

/** A plant with multiplied light and losses: light to the absorber, all losses of receiver and loop, and the loss of the
 *  tank's shell. The multiplied cleanliness and emittance serve this purpose only and can exceed 1. */
export function asBuiltPlant(
	plant: Plant,
	{ optics, losses, tankLoss }: Departures,
): { readonly plant: Plant; readonly factors: ModelFactors } {
	const { dish, loop } = plant;
	const pump = { ...loop.pump, casingLossCoefficient: loop.pump.casingLossCoefficient * losses };
	return {
		plant: {
			...plant,
			dish: { ...dish, cleanliness: dish.cleanliness * optics },
			receiver: asBuiltReceiver(plant.receiver, optics, losses),
			loop: { ...loop, pump, fittingsLossCoefficient: loop.fittingsLossCoefficient * losses },
		},
		factors: { ...AS_CORRELATED, receiverConvection: losses, laggingLoss: losses, tankLoss },
	};
}

function asBuiltReceiver(receiver: Receiver, optics: number, losses: number): Receiver {
	if (!hasTube(receiver))
		return {
			...receiver,
			opticalEfficiency: receiver.opticalEfficiency * optics,
			lossCoefficient: receiver.lossCoefficient * losses,
		};
	return { ...receiver, emittance: receiver.emittance * losses };
}
