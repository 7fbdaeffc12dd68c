import { cavityWallArea } from "./cavity.ts";
import { PAINT_IN_DIFFUSE_LIGHT, paintAtAngle } from "./paint.ts";
import type { CavityReceiver } from "./receiver.ts";

const RINGS = 16; // of the dish, of equal area; 256 rings change the share by at most 0.0002

/** Share of a dish's light that a painted cavity absorbs. The light crosses in the centre of the aperture and strikes the back or side
 *  obliquely. Diffuse light from that spot reaches aperture, ring and wall by their view factors;
 *  later reflections from the wall reach them by their areas. Light on the ring around the aperture does not heat the fluid.
 *  a_eff = mean of a(i) + [1 − a(i)]·(1 − F_opening − F_ring·a_d)·W,  W = a_d/{1 − (1 − a_d)·[1 − (A_opening + A_ring·a_d)/A_wall]}
 *  @param rimAngle  half-angle of the cone of light [rad]; light from beyond 90° does not enter and counts as spillage
 *  @returns a_eff [-]: for paint of 0.94 in a cavity 1.3 apertures wide and deep 0.986 at 45°, 0.981 at 75°
 *  Assumes a smooth wall: grooves and roundness of the tubes have opposite effects of the same size
 *  Error   against traced rays for paint of 0.94 and more and a depth of at least half the width: 0.004; for 0.85, 0.008. Against a wall of
 *          tubes 0.006 and 0.015, greatest in shallow cavities of a shallow dish
 *  Source  angular law by Duffie & Beckman, see `paintAtAngle`; view factors of a disc: `discViewFromBack`; the balance is an assumption
 *  Check   traced rays in cavities of many shapes   tests/unit/receiver/cavity-light.test.ts */
export function cavityAbsorptance(receiver: CavityReceiver, rimAngle: number): number {
	const { absorptance, depth } = receiver;
	const [radius, opening] = [receiver.innerDiameter / 2, receiver.apertureDiameter / 2];
	const diffuse = absorptance * PAINT_IN_DIFFUSE_LIGHT;
	const wall = cavityWallArea(receiver) / Math.PI;
	const [open, ring] = [opening * opening, radius * radius - opening * opening];
	const inside = 1 - (open + ring * diffuse) / wall;
	const absorbedLater = diffuse / (1 - (1 - diffuse) * inside);
	const most = Math.tan(Math.min(rimAngle, Math.PI / 2) / 2);
	let sum = 0;
	for (let i = 0; i < RINGS; i++) {
		const half = Math.sqrt((i + 0.5) / RINGS) * most; // tan of half the angle to the axis
		const { slant, view } = firstStrike((2 * half) / (1 - half * half), 2 * Math.atan(half), radius, depth);
		const [toOpening, toFront] = [view(opening), view(radius)];
		const first = absorptance * paintAtAngle(slant);
		sum += first + (1 - first) * (1 - toOpening - (toFront - toOpening) * diffuse) * absorbedLater;
	}
	return sum / RINGS;
}

/** First strike of light from the centre of the aperture: angle of incidence, and view factor from there to a disc around the aperture. */
function firstStrike(tangent: number, angle: number, radius: number, depth: number) {
	return depth * tangent <= radius
		? { slant: angle, view: (disc: number) => discViewFromBack(disc, depth, depth * tangent) }
		: {
				slant: Math.PI / 2 - angle,
				view: (disc: number) => discViewFromSide(disc, radius / tangent, radius),
			};
}

/** View factor from a spot to a disc in a parallel plane.
 *  F = ½·[1 − (h² + l² − r²)/√((h² + l² + r²)² − 4·r²·l²)]
 *  @param disc  r, its radius     @param distance  h, between the planes     @param offset  l, of the spot from the disc's axis [m]
 *  Source  Hottel; Siegel & Howell, Thermal Radiation Heat Transfer, app. of configuration factors (from memory)
 *  Check   the spot on the axis, r²/(h² + r²)   tests/unit/receiver/cavity-light.test.ts */
export function discViewFromBack(disc: number, distance: number, offset: number): number {
	const away = distance * distance + offset * offset - disc * disc;
	return (1 - away / edgeProduct(disc, distance, offset)) / 2;
}

/** The same for a spot whose plane is perpendicular to that of the disc and that faces its axis.
 *  F = (h/2l)·[(h² + l² + r²)/√((h² + l² + r²)² − 4·r²·l²) − 1]
 *  @param disc  r, at most l     @param distance  h, of the spot from the disc's plane     @param offset  l, from its axis [m]
 *  Source  as `discViewFromBack`
 *  Check   next to a disc that fills the cavity, one half   tests/unit/receiver/cavity-light.test.ts */
export function discViewFromSide(disc: number, distance: number, offset: number): number {
	const sum = distance * distance + offset * offset + disc * disc;
	return (distance / (2 * offset)) * (sum / edgeProduct(disc, distance, offset) - 1);
}

/** Product of the distances from a spot to the near and the far edge of a disc [m²]: the root in both view factors, free of cancellation. */
function edgeProduct(disc: number, distance: number, offset: number): number {
	const h2 = distance * distance;
	return Math.sqrt((h2 + (offset - disc) * (offset - disc)) * (h2 + (offset + disc) * (offset + disc)));
}
