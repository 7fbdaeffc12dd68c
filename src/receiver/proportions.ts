import type { AbsorberTube, CavityReceiver, TubeReceiver } from "./receiver.ts";

const HOLLOW_OVER_APERTURE = 1.3; // [-] our proportion, no source: light from the rim still meets the wall, few square metres to lose heat
const DEPTH_OVER_HOLLOW = 1; // [-] our proportion, no source

/** The receiver with another aperture and everything that goes with it: a hollow 1.3 apertures wide and as deep as wide, its
 *  wall and back wound turn against turn; of a flat spiral the tube that fills the disc. Surfaces, tube section, cover and
 *  lagging stay.
 *  @param receiver          what to change
 *  @param apertureDiameter  [m] */
export function proportionedReceiver<R extends TubeReceiver>(receiver: R, apertureDiameter: number): R;
export function proportionedReceiver(receiver: TubeReceiver, apertureDiameter: number): TubeReceiver {
	switch (receiver.kind) {
		case "cavity":
			return withHollow({ ...receiver, apertureDiameter }, HOLLOW_OVER_APERTURE * apertureDiameter);
		case "openCoil":
		case "glazedCoil":
			return {
				...receiver,
				apertureDiameter,
				tube: wound(receiver.tube, (Math.PI / 4) * apertureDiameter * apertureDiameter),
			};
		default:
			return receiver satisfies never;
	}
}

/** The receiver with an absorber so wide [m], `absorberWidth`, and the tube that covers it: of a cavity the hollow, its opening left. */
export function receiverOfWidth(receiver: TubeReceiver, width: number): TubeReceiver {
	switch (receiver.kind) {
		case "cavity":
			return withHollow(receiver, width);
		case "openCoil":
		case "glazedCoil":
			return proportionedReceiver(receiver, width);
		default:
			return receiver satisfies never;
	}
}

/** The cavity with a hollow so wide [m], as deep as wide, its wall and back wound turn against turn. */
function withHollow(cavity: CavityReceiver, innerDiameter: number): CavityReceiver {
	const depth = DEPTH_OVER_HOLLOW * innerDiameter;
	const tube = wound(cavity.tube, Math.PI * innerDiameter * (depth + innerDiameter / 4));
	return { ...cavity, innerDiameter, depth, tube };
}

/** The length of this tube that covers an area, each turn touching the next. */
function wound(tube: AbsorberTube, area: number): AbsorberTube {
	return { ...tube, length: area / tube.outerDiameter };
}
