import { uniformStream } from "../../../src/numeric/random.ts";
import {
	dot,
	type Hollow,
	strikeHollow,
	strikeTubes,
	throughOpening,
	thrownBack,
	type Uniform,
	type Vector,
} from "./painted-trace.ts";

const NOTHING = 1e-6;

/** Share of a dish's light that a hollow takes up whose wall and back are wound of thin touching tube: where a ray strikes, it is
 *  followed among straight tubes that lie around the axis until it leaves their grooves. */
export function tracedTubeWall(
	hollow: Hollow,
	absorptance: (cosine: number) => number,
	rimAngle: number,
	rays: number,
): number {
	const uniform = uniformStream(1);
	let sum = 0;
	for (let ray = 0; ray < rays; ray++) {
		let [from, along] = throughOpening(hollow, rimAngle, uniform);
		for (let left = 1; left > NOTHING; ) {
			const met = strikeHollow(hollow, from, along);
			if (met === undefined) break;
			const { at, normal } = met;
			if (met.painted) {
				const kept = amongTubes(along, normal, aroundAxis(at), absorptance, uniform);
				sum += left * kept.taken;
				left *= 1 - kept.taken;
				along = kept.along;
			} else {
				left *= 1 - absorptance(-dot(along, normal));
				along = thrownBack(normal, uniform);
			}
			from = [at[0] + NOTHING * normal[0], at[1] + NOTHING * normal[1], at[2] + NOTHING * normal[2]];
		}
	}
	return sum / rays;
}

/** What tubes that run along `axis` take of a ray, and where the rest leaves them for. */
function amongTubes(
	along: Vector,
	normal: Vector,
	axis: Vector,
	absorptance: (cosine: number) => number,
	uniform: Uniform,
): { readonly taken: number; readonly along: Vector } {
	const across = cross(axis, normal);
	let way: Vector = [dot(along, across), dot(along, axis), dot(along, normal)];
	let from: Vector = [2 * uniform() - 1, 0, 1 + NOTHING];
	let left = 1;
	for (let met = strikeTubes(from, way); met && left > NOTHING; met = strikeTubes(from, way)) {
		left *= 1 - absorptance(-dot(way, met.normal));
		const [x, y, z] = met.at;
		from = [x + NOTHING * met.normal[0], y, z + NOTHING * met.normal[2]];
		way = thrownBack(met.normal, uniform);
	}
	const out = Math.max(way[2], NOTHING);
	const part = (k: 0 | 1 | 2) => across[k] * way[0] + axis[k] * way[1] + normal[k] * out;
	return { taken: 1 - left, along: [part(0), part(1), part(2)] };
}

function aroundAxis([x, y]: Vector): Vector {
	const radius = Math.hypot(x, y);
	return radius > 0 ? [-y / radius, x / radius, 0] : [0, 1, 0];
}

const cross = (a: Vector, b: Vector): Vector => [
	a[1] * b[2] - a[2] * b[1],
	a[2] * b[0] - a[0] * b[2],
	a[0] * b[1] - a[1] * b[0],
];
