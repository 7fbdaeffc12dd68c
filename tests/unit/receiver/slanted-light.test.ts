import { describe, expect, it } from "vitest";
import { effectiveCavityAbsorptance } from "../../../src/receiver/cavity.ts";
import { paneTransmittance, tubesAbsorptance } from "../../../src/receiver/slanted-light.ts";
import { paintAt, tracedHollow, tracedTubes } from "./painted-trace.ts";

const DEGREE = Math.PI / 180;
const RAYS = 40_000; // standard deviation of a traced share below 0.0007

const painted = (absorptance: number) => (cosine: number) => absorptance * paintAt(cosine);

describe("light on touching tubes", () => {
	it("the tracer itself: a wall black at every angle takes all, smooth paint square to the light its own share", () => {
		expect(tracedTubes(() => 1, 45 * DEGREE, 1000)).toBe(1);
		expect(paintAt(1)).toBe(1);
		expect(paintAt(Math.cos(45 * DEGREE))).toBeCloseTo(0.974, 3);
	});

	it.each([0.85, 0.9, 0.94, 0.96])("agrees with traced rays for paint of %f", (absorptance) => {
		const traced = tracedTubes(painted(absorptance), 45 * DEGREE, RAYS);
		expect(Math.abs(tubesAbsorptance(absorptance) - traced)).toBeLessThan(0.003);
	});

	it.each([
		[30, -0.005],
		[60, 0.01],
		[75, 0.031],
		[90, 0.116],
	])("at a rim angle of %f° it is off by as much as it says", (rim, tooHigh) => {
		const traced = tracedTubes(painted(0.94), rim * DEGREE, RAYS);
		expect(Math.abs(tubesAbsorptance(0.94) - traced - tooHigh)).toBeLessThan(0.003);
	});

	it("a blacker paint takes more, none takes none, no wall takes more than all", () => {
		let before = 0;
		expect(tubesAbsorptance(0)).toBe(0);
		for (let absorptance = 0.05; absorptance <= 1.001; absorptance += 0.05) {
			const now = tubesAbsorptance(absorptance);
			expect(now).toBeGreaterThan(before);
			expect(now).toBeLessThan(1);
			before = now;
		}
	});
});

describe("light through a pane", () => {
	const INDEX = 1.526; // of glass, Duffie & Beckman, § 5.1 (from memory)
	const DEPTH = 0.02; // extinction over its thickness, of good glass

	/** Fresnel's equations for both polarizations, both faces, and what the glass soaks up. */
	const transmittance = (angle: number): number => {
		const inside = Math.asin(Math.sin(angle) / INDEX);
		const cosines = [Math.cos(angle), Math.cos(inside)] as const;
		const across = ((cosines[0] - INDEX * cosines[1]) / (cosines[0] + INDEX * cosines[1])) ** 2;
		const along = ((INDEX * cosines[0] - cosines[1]) / (INDEX * cosines[0] + cosines[1])) ** 2;
		const both = ((1 - across) / (1 + across) + (1 - along) / (1 + along)) / 2;
		return both * Math.exp(-DEPTH / cosines[1]);
	};
	/** Mean over the dish, each part by its area seen from the sun. */
	const overDish = (rim: number): number => {
		const parts = 2000;
		const tangent = Math.tan(rim / 2);
		let sum = 0;
		for (let i = 0; i < parts; i++)
			sum += transmittance(2 * Math.atan(tangent * Math.sqrt((i + 0.5) / parts)));
		return sum / parts / transmittance(0);
	};

	it.each([
		[45, 0],
		[30, -0.005],
		[60, 0.02],
		[75, 0.092],
	])("at a rim angle of %f° Fresnel's equations leave it too high by %f", (rim, tooHigh) => {
		expect(Math.abs(paneTransmittance(1) - overDish(rim * DEGREE) - tooHigh)).toBeLessThan(0.002);
	});
});

describe("light in a hollow", () => {
	// The formula knows neither the slant nor the ring about the opening. A hollow catches again what its wall throws back, so
	// that both together cost less than one per cent at a rim angle of 45°.
	it.each([0.85, 0.9, 0.94])("paint of %f: within 1.1 % of traced rays", (absorptance) => {
		const hollow = { radius: 0.65, depth: 1.3, opening: 0.5 };
		const ratio = hollow.opening ** 2 / (2 * hollow.radius * (hollow.depth + hollow.radius / 2));
		const traced = tracedHollow(hollow, painted(absorptance), 45 * DEGREE, RAYS);
		const formula = effectiveCavityAbsorptance(absorptance, ratio);
		expect(formula).toBeGreaterThan(traced);
		expect(formula - traced).toBeLessThan(0.011);
	});
});
