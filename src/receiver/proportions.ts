import type { AbsorberTube, CavityReceiver, TubeReceiver } from "./receiver.ts";

const WIDTH_OVER_APERTURE = 1.3; // [-] chosen, no source: light from the rim still meets the wall, and the surface that loses heat is small
const DEPTH_OVER_WIDTH = 1; // [-] chosen, no source

/** The receiver with another aperture and the sizes that follow from it: a cavity 1.3 apertures wide and as deep as wide, its
 *  wall and back covered by touching turns; for a flat spiral, the tube that fills the disc. Surfaces, tube section, cover and
 *  insulation do not change.
 *  @param receiver          the original
 *  @param apertureDiameter  [m] */
export function proportionedReceiver<R extends TubeReceiver>(receiver: R, apertureDiameter: number): R;
export function proportionedReceiver(receiver: TubeReceiver, apertureDiameter: number): TubeReceiver {
	switch (receiver.kind) {
		case "cavity":
			return withWidth({ ...receiver, apertureDiameter }, WIDTH_OVER_APERTURE * apertureDiameter);
		case "openCoil":
		case "glazedCoil":
			return {
				...receiver,
				apertureDiameter,
				tube: tubeOver(receiver.tube, (Math.PI / 4) * apertureDiameter * apertureDiameter),
			};
		default:
			return receiver satisfies never;
	}
}

/** The receiver with an absorber of a given width [m], `absorberWidth`, and the tube that covers it; a cavity keeps its aperture. */
export function receiverOfWidth(receiver: TubeReceiver, width: number): TubeReceiver {
	switch (receiver.kind) {
		case "cavity":
			return withWidth(receiver, width);
		case "openCoil":
		case "glazedCoil":
			return proportionedReceiver(receiver, width);
		default:
			return receiver satisfies never;
	}
}

/** The cavity with a given inner diameter [m], as deep as wide, its wall and back covered by touching turns. */
function withWidth(cavity: CavityReceiver, innerDiameter: number): CavityReceiver {
	const depth = DEPTH_OVER_WIDTH * innerDiameter;
	const tube = tubeOver(cavity.tube, Math.PI * innerDiameter * (depth + innerDiameter / 4));
	return { ...cavity, innerDiameter, depth, tube };
}

/** The tube with the length that covers an area with touching turns. */
function tubeOver(tube: AbsorberTube, area: number): AbsorberTube {
	return { ...tube, length: area / tube.outerDiameter };
}
