import { cavityWallArea } from "./cavity.ts";
import { PAINT_IN_DIFFUSE_LIGHT, paintAtAngle } from "./paint.ts";
import type { CavityReceiver } from "./receiver.ts";

const RINGS = 16; // of the dish, of one area each; 256 move the share by 0.0002 at most

/** Share of a dish's light that a painted hollow takes up. The light crosses in the middle of the opening. It strikes back or side
 *  at a slant; what the paint throws back, evenly in all directions, finds opening, ring and wall by how they are seen from there;
 *  what comes from the wall later, by their areas. Of the light on the ring about the opening nothing comes to the fluid.
 *  a_eff = mean of a(i) + [1 − a(i)]·(1 − F_opening − F_ring·a_d)·W,  W = a_d/{1 − (1 − a_d)·[1 − (A_opening + A_ring·a_d)/A_wall]}
 *  @param rimAngle  half-angle of the cone of light [rad]; light from beyond 90° does not enter and counts as spilled
 *  @returns a_eff [-]: for paint of 0.94 in a hollow 1.3 openings wide and deep 0.986 at 45°, 0.981 at 75°
 *  Assumes a smooth wall: the tubes' grooves help as much as their roundness costs
 *  Error   against rays traced, paint 0.94 and more, hollow at least half as deep as wide: 0.004; of 0.85, 0.008. Against a wall of
 *          tubes 0.006 and 0.015, the most in flat hollows of a flat dish
 *  Source  the law of angle by Duffie & Beckman, see `paintAtAngle`; views of a disc from `discView`; the account is ours
 *  Check   rays traced in hollows of many shapes   tests/unit/receiver/hollow-light.test.ts */
export function hollowAbsorptance(receiver: CavityReceiver, rimAngle: number): number {
	const { absorptance, depth } = receiver;
	const [radius, opening] = [receiver.innerDiameter / 2, receiver.apertureDiameter / 2];
	const diffuse = absorptance * PAINT_IN_DIFFUSE_LIGHT;
	const wall = cavityWallArea(receiver) / Math.PI;
	const [open, ring] = [opening * opening, radius * radius - opening * opening];
	const kept = 1 - (open + ring * diffuse) / wall;
	const caught = diffuse / (1 - (1 - diffuse) * kept);
	const most = Math.tan(Math.min(rimAngle, Math.PI / 2) / 2);
	let sum = 0;
	for (let i = 0; i < RINGS; i++) {
		const half = Math.sqrt((i + 0.5) / RINGS) * most; // tan of half the angle to the axis
		const { slant, view } = firstStrike((2 * half) / (1 - half * half), 2 * Math.atan(half), radius, depth);
		const [toOpening, toFront] = [view(opening), view(radius)];
		const first = absorptance * paintAtAngle(slant);
		sum += first + (1 - first) * (1 - toOpening - (toFront - toOpening) * diffuse) * caught;
	}
	return sum / RINGS;
}

/** Where light from the middle of the opening strikes: how slanted, and what share of what is thrown back goes to a disc about the opening. */
function firstStrike(tangent: number, angle: number, radius: number, depth: number) {
	return depth * tangent <= radius
		? { slant: angle, view: (disc: number) => discViewFromBack(disc, depth, depth * tangent) }
		: {
				slant: Math.PI / 2 - angle,
				view: (disc: number) => discViewFromSide(disc, radius / tangent, radius),
			};
}

/** Share of what a spot sends out evenly that meets a disc in a plane parallel to it.
 *  F = ½·[1 − (h² + l² − r²)/√((h² + l² + r²)² − 4·r²·l²)]
 *  @param disc  r, its radius     @param distance  h, from plane to plane     @param offset  l, of the spot from the disc's axis [m]
 *  Source  Hottel; Siegel & Howell, Thermal Radiation Heat Transfer, app. of configuration factors (from memory)
 *  Check   the spot on the axis, r²/(h² + r²)   tests/unit/receiver/hollow-light.test.ts */
export function discViewFromBack(disc: number, distance: number, offset: number): number {
	const away = distance * distance + offset * offset - disc * disc;
	return (1 - away / edgeProduct(disc, distance, offset)) / 2;
}

/** The same of a spot whose own plane is square to the disc's and that faces its axis.
 *  F = (h/2l)·[(h² + l² + r²)/√((h² + l² + r²)² − 4·r²·l²) − 1]
 *  @param disc  r, at most l     @param distance  h, of the spot from the disc's plane     @param offset  l, from its axis [m]
 *  Source  as `discViewFromBack`
 *  Check   beside a disc that fills the hollow, one half   tests/unit/receiver/hollow-light.test.ts */
export function discViewFromSide(disc: number, distance: number, offset: number): number {
	const sum = distance * distance + offset * offset + disc * disc;
	return (distance / (2 * offset)) * (sum / edgeProduct(disc, distance, offset) - 1);
}

/** Distances from a spot to the near and the far edge of a disc, multiplied [m²]: the root in both views without its difference of squares. */
function edgeProduct(disc: number, distance: number, offset: number): number {
	const h2 = distance * distance;
	return Math.sqrt((h2 + (offset - disc) * (offset - disc)) * (h2 + (offset + disc) * (offset + disc)));
}
