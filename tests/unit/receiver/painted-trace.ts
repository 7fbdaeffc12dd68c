import { uniformStream } from "../../../src/numeric/random.ts";

export type Vector = readonly [x: number, y: number, z: number];
export type Uniform = () => number;

/** Absorptance of flat black paint at an angle over that at square incidence: Duffie & Beckman, Solar Engineering of Thermal
 *  Processes, eq. 4.11.1, to 80° (as two public copies print it); on a straight line from there to none at 90°. */
export function paintAt(cosine: number): number {
	const t = (Math.acos(Math.min(1, Math.max(0, cosine))) * 180) / Math.PI;
	return t <= 80 ? paintTo80(t) : (paintTo80(80) * (90 - t)) / 10;
}

const LAW = [1, -1.5879e-3, 2.7314e-4, -2.3026e-5, 9.0244e-7, -1.8e-8, 1.7734e-10, -6.9937e-13];
const paintTo80 = (degrees: number) => LAW.reduceRight((sum, factor) => sum * degrees + factor, 0);

/** Angle to its axis of light from a point of the dish taken at random by area seen from the sun. */
export const coneAngle = (rimAngle: number, uniform: Uniform) =>
	2 * Math.atan(Math.sqrt(uniform()) * Math.tan(rimAngle / 2));

/** A direction around an axis along z, from where `downward` is −1 or 1. */
export function fromDish(rimAngle: number, downward: number, uniform: Uniform): Vector {
	const angle = coneAngle(rimAngle, uniform);
	const bearing = 2 * Math.PI * uniform();
	return [
		Math.sin(angle) * Math.cos(bearing),
		Math.sin(angle) * Math.sin(bearing),
		downward * Math.cos(angle),
	];
}

/** A direction thrown back by a matt surface (Lambert's law). */
export function thrownBack(normal: Vector, uniform: Uniform): Vector {
	const [nx, ny, nz] = normal;
	const share = uniform();
	const bearing = 2 * Math.PI * uniform();
	const along = Math.sqrt(1 - share);
	const a = Math.sqrt(share) * Math.cos(bearing);
	const b = Math.sqrt(share) * Math.sin(bearing);
	const [tx, ty, tz]: Vector = Math.abs(nz) > 0.5 ? unit([nz, 0, -nx]) : unit([-ny, nx, 0]);
	const [sx, sy, sz]: Vector = [ny * tz - nz * ty, nz * tx - nx * tz, nx * ty - ny * tx];
	return [a * tx + b * sx + along * nx, a * ty + b * sy + along * ny, a * tz + b * sz + along * nz];
}

export const dot = (a: Vector, b: Vector) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

export function unit([x, y, z]: Vector): Vector {
	const length = Math.hypot(x, y, z);
	return [x / length, y / length, z / length];
}

/** Where a ray strikes, and the normal there; undefined where it gets away. */
export type Strike = { readonly at: Vector; readonly normal: Vector; readonly painted: boolean } | undefined;

/** Share that painted walls take up, the rest thrown back matt until it gets away. */
function taken(
	start: (uniform: Uniform) => readonly [Vector, Vector],
	strike: (from: Vector, along: Vector) => Strike,
	absorptance: (cosine: number) => number,
	rays: number,
	seed: number,
): number {
	const uniform = uniformStream(seed);
	let sum = 0;
	for (let i = 0; i < rays; i++) {
		let [from, along] = start(uniform);
		let left = 1;
		while (left > 1e-6) {
			const met = strike(from, along);
			if (met === undefined) break;
			const [nx, ny, nz] = met.normal;
			const share = absorptance(-dot(along, met.normal));
			if (met.painted) sum += left * share;
			left *= 1 - share;
			from = [met.at[0] + 1e-7 * nx, met.at[1] + 1e-7 * ny, met.at[2] + 1e-7 * nz];
			along = thrownBack(met.normal, uniform);
		}
	}
	return sum / rays;
}

const TUBES = 60; // on either side that a slanted ray may reach

/** Share of a dish's light that a wall of touching round tubes along y takes up, its axes at z = 0 and one radius 1. */
export function tracedTubes(absorptance: (cosine: number) => number, rimAngle: number, rays: number): number {
	return taken(
		(uniform) => [[2 * uniform() - 1, 0, 1 + 1e-7], fromDish(rimAngle, -1, uniform)],
		strikeTubes,
		absorptance,
		rays,
		1,
	);
}

export function strikeTubes([px, py, pz]: Vector, [dx, dy, dz]: Vector): Strike {
	const across = dx * dx + dz * dz;
	const nearest = 2 * Math.round(px / 2);
	let travel = Number.POSITIVE_INFINITY;
	let axis = 0;
	for (let tube = -TUBES; tube <= TUBES; tube++) {
		const x = px - (nearest + 2 * tube);
		const half = x * dx + pz * dz;
		const root = half * half - across * (x * x + pz * pz - 1);
		if (!(root > 0)) continue;
		const at = (-half - Math.sqrt(root)) / across;
		if (at > 1e-9 && at < travel && pz + at * dz > -1e-9) {
			travel = at;
			axis = nearest + 2 * tube;
		}
	}
	if (travel === Number.POSITIVE_INFINITY) return undefined;
	const at: Vector = [px + travel * dx, py + travel * dy, pz + travel * dz];
	return { at, normal: [at[0] - axis, 0, at[2]], painted: true };
}

/** A hollow: cylinder and back painted, a ring about the opening that takes light up but gives nothing to the fluid. */
export interface Hollow {
	readonly radius: number;
	readonly depth: number;
	readonly opening: number; // radius of the aperture; the dish's light fills the middle half of it
}

export function tracedHollow(
	hollow: Hollow,
	absorptance: (cosine: number) => number,
	rimAngle: number,
	rays: number,
): number {
	return taken(
		(uniform) => throughOpening(hollow, rimAngle, uniform),
		(from, along) => strikeHollow(hollow, from, along),
		absorptance,
		rays,
		1,
	);
}

export function throughOpening(
	hollow: Hollow,
	rimAngle: number,
	uniform: Uniform,
): readonly [Vector, Vector] {
	const r = (hollow.opening / 2) * Math.sqrt(uniform());
	const bearing = 2 * Math.PI * uniform();
	return [[r * Math.cos(bearing), r * Math.sin(bearing), 1e-9], fromDish(rimAngle, 1, uniform)];
}

export function strikeHollow(
	{ radius, depth, opening }: Hollow,
	[px, py, pz]: Vector,
	[dx, dy, dz]: Vector,
): Strike {
	const across = dx * dx + dy * dy;
	const half = px * dx + py * dy;
	const root = Math.sqrt(Math.max(0, half * half - across * (px * px + py * py - radius * radius)));
	const toSide = across > 1e-14 ? (root - half) / across : Number.POSITIVE_INFINITY;
	const toEnd = dz > 0 ? (depth - pz) / dz : dz < 0 ? -pz / dz : Number.POSITIVE_INFINITY;
	const travel = Math.min(toSide, toEnd);
	const at: Vector = [px + travel * dx, py + travel * dy, pz + travel * dz];
	if (toSide < toEnd) return { at, normal: [-at[0] / radius, -at[1] / radius, 0], painted: true };
	if (dz > 0) return { at, normal: [0, 0, -1], painted: true };
	return Math.hypot(at[0], at[1]) < opening ? undefined : { at, normal: [0, 0, 1], painted: false };
}
