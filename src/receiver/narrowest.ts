import type { TubeReceiver } from "./receiver.ts";

const NARROWEST_HELIX = 2; // [-] bores: tighter a tube can hardly be wound, and its film is not known; as `criticalReynoldsHelical` has it
const OUTER_OVER_MEAN = 1.5; // [-] of a flat spiral, as `woundDiameter` has it

/** Narrowest absorber that the receiver's tube can be wound to [m]: of a flat spiral the disc, of a cavity the hollow. It turns
 *  the bound of the film's model on bore over helix round. */
export function narrowestAbsorber(receiver: Pick<TubeReceiver, "kind" | "tube">): number {
	const { innerDiameter, outerDiameter } = receiver.tube;
	const helix = NARROWEST_HELIX * innerDiameter;
	switch (receiver.kind) {
		case "cavity":
			return Math.max(0, helix - outerDiameter);
		case "openCoil":
		case "glazedCoil":
			return OUTER_OVER_MEAN * helix;
		default:
			return receiver.kind satisfies never;
	}
}

/** How wide the absorber is [m]: the disc of a flat spiral, the hollow of a cavity. */
export function absorberWidth(receiver: TubeReceiver): number {
	switch (receiver.kind) {
		case "cavity":
			return receiver.innerDiameter;
		case "openCoil":
		case "glazedCoil":
			return receiver.apertureDiameter;
		default:
			return receiver satisfies never;
	}
}
