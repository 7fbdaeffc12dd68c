import { expect } from "vitest";
import { cavityAbsorptance } from "../../../src/receiver/cavity-light.ts";
import { type Hollow, paintAt, tracedHollow } from "./painted-trace.ts";
import { cavity } from "./receivers.ts";
import { tracedTubeWall } from "./tube-walled-trace.ts";

const DEGREE = Math.PI / 180;

export const HOLLOWS = {
	usual: { radius: 0.65, depth: 1.3, opening: 0.5 },
	"half as deep": { radius: 0.65, depth: 0.65, opening: 0.5 },
	deep: { radius: 0.65, depth: 3, opening: 0.5 },
	"without a ring": { radius: 0.5, depth: 1, opening: 0.5 },
	wide: { radius: 1, depth: 1, opening: 0.5 },
	"wide and deep": { radius: 1, depth: 2, opening: 0.5 },
} satisfies Readonly<Record<string, Hollow>>;

export const HOLLOW_NAMES = Object.keys(HOLLOWS) as readonly (keyof typeof HOLLOWS)[];

/** @param rim  rim angle of the dish [°] */
export function absorbed({ radius, depth, opening }: Hollow, absorptance: number, rim: number): number {
	return cavityAbsorptance(
		{ ...cavity, innerDiameter: 2 * radius, apertureDiameter: 2 * opening, depth, absorptance },
		rim * DEGREE,
	);
}

const painted = (absorptance: number) => (cosine: number) => absorptance * paintAt(cosine);

/** Holds the formula against rays in a smooth hollow, and in one walled with tubes, of three paints. */
export function expectTraced(name: keyof typeof HOLLOWS, rim: number): void {
	for (const [absorptance, smooth, tubes] of [
		[0.85, 0.008, 0.015],
		[0.94, 0.004, 0.006],
		[0.98, 0.004, 0.006],
	] as const) {
		const formula = absorbed(HOLLOWS[name], absorptance, rim);
		const rays = (trace: typeof tracedHollow, count: number) =>
			trace(HOLLOWS[name], painted(absorptance), rim * DEGREE, count);
		expect(Math.abs(formula - rays(tracedHollow, 20_000))).toBeLessThan(smooth + 0.001);
		expect(Math.abs(formula - rays(tracedTubeWall, 2000))).toBeLessThan(tubes + 0.002);
	}
}
