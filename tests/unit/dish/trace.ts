import { normalStream, uniformStream } from "../../../src/numeric/random.ts";

type Vector = readonly [x: number, y: number, z: number];

const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vector, b: Vector): Vector => [
	a[1] * b[2] - a[2] * b[1],
	a[2] * b[0] - a[0] * b[2],
	a[0] * b[1] - a[1] * b[0],
];
const unit = (a: Vector): Vector => {
	const length = Math.hypot(...a);
	return [a[0] / length, a[1] / length, a[2] / length];
};
/** A direction turned by two small angles about axes square to it. */
const tilted = (a: Vector, first: number, second: number): Vector => {
	const side = unit(cross(a, Math.abs(a[0]) < 0.5 ? [1, 0, 0] : [0, 1, 0]));
	const other = cross(a, side);
	return unit([
		a[0] + Math.tan(first) * side[0] + Math.tan(second) * other[0],
		a[1] + Math.tan(first) * side[1] + Math.tan(second) * other[1],
		a[2] + Math.tan(first) * side[2] + Math.tan(second) * other[2],
	]);
};

/** What is traced: a round patch of a paraboloid z = r²/4F as the sun sees it, and a round hole at the focus. */
export interface Scene {
	readonly focalLength: number; // F of the parent [m]
	readonly patchRadius: number; // [m]
	readonly patchOffset: number; // of its middle from the axis, along y [m]
	readonly receiverNormal: Vector; // from the focus towards the mirror
	readonly receiverRadius: number; // [m]
	readonly slopeError: number; // [rad] per axis
	readonly beamSpread: number; // [rad] per axis, of everything else
}

/** Share of rays that pass the hole: vector reflection off disturbed normals, no small-angle step. */
export function tracedIntercept(scene: Scene, rays: number, seed: number): number {
	const uniform = uniformStream(seed);
	const normal = normalStream(seed + 1);
	const F = scene.focalLength;
	let hits = 0;
	for (let i = 0; i < rays; i++) {
		const radius = scene.patchRadius * Math.sqrt(uniform());
		const angle = 2 * Math.PI * uniform();
		const x = radius * Math.cos(angle);
		const y = scene.patchOffset + radius * Math.sin(angle);
		const point: Vector = [x, y, (x * x + y * y) / (4 * F)];
		const surface = unit([-x / (2 * F), -y / (2 * F), 1]);
		const facet = tilted(surface, scene.slopeError * normal(), scene.slopeError * normal());
		const sunray = tilted([0, 0, -1], scene.beamSpread * normal(), scene.beamSpread * normal());
		const twice = 2 * dot(sunray, facet);
		const ray: Vector = [
			sunray[0] - twice * facet[0],
			sunray[1] - twice * facet[1],
			sunray[2] - twice * facet[2],
		];
		const toFocus: Vector = [-point[0], -point[1], F - point[2]];
		const closing = dot(ray, scene.receiverNormal);
		if (!(closing < 0)) continue; // would meet the back of the hole
		const travel = dot(toFocus, scene.receiverNormal) / closing;
		const miss = Math.hypot(
			travel * ray[0] - toFocus[0],
			travel * ray[1] - toFocus[1],
			travel * ray[2] - toFocus[2],
		);
		if (travel > 0 && miss <= scene.receiverRadius) hits++;
	}
	return hits / rays;
}
