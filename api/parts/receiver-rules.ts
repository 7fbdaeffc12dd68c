import {
	absorberWidth,
	hasHollow,
	hasTube,
	narrowestAbsorber,
	proportionedReceiver,
} from "../../src/index.ts";
import { contradictory, impossible, outOfRange, type Rule, said } from "../validation/rule.ts";
import { coreDish, type Dish } from "./dish.ts";
import { isSized } from "./dish-rules.ts";
import type { Receiver } from "./receiver.ts";
import { unsizedReceiver } from "./receiver-design.ts";

type WithReceiver = { readonly receiver: Receiver };

/** How wide a mirror of one given size is [m]. */
export function mirrorWidth(dish: Dish): number {
	const mirror = coreDish(dish, (_, value) => value);
	return mirror.kind === "twoAxis" ? mirror.diameter : Math.sqrt((4 * mirror.mirrorArea) / Math.PI);
}

/** The receiver is smaller than the dish that lights it. */
export const receiverWithinDish: Rule<WithReceiver & { readonly dish: Dish }> = ({ dish, receiver }) => {
	if (!hasTube(receiver) || receiver.apertureDiameterM === "auto" || !isSized(dish)) return [];
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
	if (!hasHollow(receiver) || receiver.innerDiameterM === undefined) return [];
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

/** A receiver of given size leaves its tube room to be wound. */
export const tubeWound: Rule<WithReceiver> = ({ receiver }) => {
	if (!hasTube(receiver)) return [];
	const hollow = hasHollow(receiver) ? receiver.innerDiameterM : undefined;
	const opening = receiver.apertureDiameterM;
	if (hollow === undefined && opening === "auto") return [];
	const unsized = unsizedReceiver(receiver);
	const width = hollow ?? absorberWidth(proportionedReceiver(unsized, opening as number));
	const narrowest = narrowestAbsorber(unsized);
	if (width >= narrowest) return [];
	const name = hollow === undefined ? "apertureDiameterM" : "innerDiameterM";
	const detail = `a tube of ${said(receiver.tube.innerDiameterMm)} mm bore is hardly wound to an absorber ${said(width)} m wide; the narrowest is ${said(narrowest)} m`;
	return [outOfRange(`/receiver/${name}`, detail)];
};
