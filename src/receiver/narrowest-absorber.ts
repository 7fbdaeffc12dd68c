import type { TubeReceiver } from "./receiver.ts";

const NARROWEST_HELIX = 2; // [-] inner diameters: a tube can hardly be wound tighter, and its film is unknown; as in `criticalReynoldsHelical`
const OUTER_OVER_MEAN = 1.5; // [-] of a flat spiral, as in `woundDiameter`

/** Narrowest absorber that the receiver's tube can be wound to [m]: diameter of a flat spiral, inner diameter of a cavity. It follows
 *  from the greatest ratio of tube to helix diameter in the film model. */
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

/** Width of the absorber [m]: diameter of a flat spiral, inner diameter of a cavity. */
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
