import { AS_CORRELATED, type ModelFactors } from "../plant/factors.ts";
import type { Plant } from "../plant/plant.ts";
import { hasTube, type Receiver } from "../receiver/receiver.ts";

/** What may set a built plant apart from its drawing. */
export type Cause = "optics" | "losses" | "tankLoss";

/** How many times the drawing's each is. */
export type Departures = Readonly<Record<Cause, number>>;

export const AS_DRAWN: Departures = { optics: 1, losses: 1, tankLoss: 1 };

/** A plant with its light and its losses multiplied: what reaches the absorber, what receiver and loop lose in every way, what the
 *  tank's shell loses. The multiplied cleanliness and emittance are means to that end and may pass 1. */
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
