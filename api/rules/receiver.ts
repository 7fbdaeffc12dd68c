import { coreDish, type Dish } from "../schemas/dish.ts";
import type { Receiver } from "../schemas/receiver.ts";
import { isSized } from "./dish.ts";
import { contradictory, impossible, type Rule, said } from "./fault.ts";

type WithReceiver = { readonly receiver: Receiver };

/** How wide a mirror of one given size is [m]. */
export function mirrorWidth(dish: Dish): number {
	const mirror = coreDish(dish, (_, value) => value);
	return mirror.kind === "twoAxis" ? mirror.diameter : Math.sqrt((4 * mirror.mirrorArea) / Math.PI);
}

/** The receiver is smaller than the dish that lights it. */
export const receiverWithinDish: Rule<WithReceiver & { readonly dish: Dish }> = ({ dish, receiver }) => {
	if (receiver.kind === "efficiencyLine" || receiver.apertureDiameterM === "auto" || !isSized(dish))
		return [];
	const across = mirrorWidth(dish);
	return receiver.apertureDiameterM >= across
		? [
				impossible(
					"/receiver/apertureDiameterM",
					`a receiver of ${said(receiver.apertureDiameterM)} m is as large as the dish of ${said(across)} m that is to light it`,
				),
			]
		: [];
};

/** A hollow is at least as wide as its opening. */
export const hollowBehindOpening: Rule<WithReceiver> = ({ receiver }) => {
	if (receiver.kind !== "cavity" || receiver.innerDiameterM === undefined) return [];
	const opening = receiver.apertureDiameterM;
	return opening !== "auto" && receiver.innerDiameterM < opening
		? [
				contradictory(
					"/receiver/innerDiameterM",
					`the hollow of ${said(receiver.innerDiameterM)} m is narrower than its opening of ${said(opening)} m`,
				),
			]
		: [];
};
