import { describe, expect, it } from "vitest";
import { paneTransmittance, tubesAbsorptance } from "../../../src/receiver/slanted-light.ts";
import { paintAt, tracedTubes } from "./painted-trace.ts";

const DEGREE = Math.PI / 180;
const RAYS = 40_000; // standard deviation of a traced share below 0.0007

const painted = (absorptance: number) => (cosine: number) => absorptance * paintAt(cosine);

describe("light on touching tubes", () => {
	it("the tracer itself: a wall black at every angle takes all, smooth paint square to the light its own share", () => {
		expect(tracedTubes(() => 1, 45 * DEGREE, 1000)).toBe(1);
		expect(paintAt(1)).toBe(1);
		expect(paintAt(Math.cos(45 * DEGREE))).toBeCloseTo(0.974, 3);
	});

	it.each([
		[5, 0.002],
		[30, 0.002],
		[45, 0.002],
		[60, 0.002],
		[75, 0.002],
		[85, 0.004],
		[90, 0.004],
	])("agrees with traced rays at a rim angle of %f°, within %f and the rays' own scatter", (rim, error) => {
		for (const absorptance of [0.85, 0.9, 0.94, 0.98]) {
			const traced = tracedTubes(painted(absorptance), rim * DEGREE, RAYS);
			expect(Math.abs(tubesAbsorptance(absorptance, rim * DEGREE) - traced)).toBeLessThan(error + 0.0015);
		}
	});

	it("square light still strikes round tubes: by quadrature over a half circle, apart from any ray", () => {
		const parts = 20_000;
		let first = 0;
		for (let i = 0; i < parts; i++) first += paintAt(Math.sqrt(1 - ((i + 0.5) / parts) ** 2));
		// What the first strike leaves is thrown back once more in part, so that more is taken than at first.
		expect(tubesAbsorptance(0.94, 0)).toBeGreaterThan((0.94 * first) / parts);
		expect(tubesAbsorptance(0.94, 0)).toBeLessThan(0.94);
	});

	it("falls all the way with the rim angle; light from behind the face does not count", () => {
		for (let rim = 2; rim <= 90; rim += 2) {
			expect(tubesAbsorptance(0.94, rim * DEGREE)).toBeLessThan(tubesAbsorptance(0.94, (rim - 2) * DEGREE));
			expect(paneTransmittance(0.9, rim * DEGREE)).toBeLessThan(paneTransmittance(0.9, (rim - 2) * DEGREE));
		}
		expect(tubesAbsorptance(0.94, 120 * DEGREE)).toBe(tubesAbsorptance(0.94, 90 * DEGREE));
		expect(paneTransmittance(0.9, 120 * DEGREE)).toBe(paneTransmittance(0.9, 90 * DEGREE));
	});

	it("a blacker paint takes more, none takes none, no wall takes more than all", () => {
		let before = 0;
		expect(tubesAbsorptance(0, 45 * DEGREE)).toBe(0);
		for (let absorptance = 0.05; absorptance <= 1.001; absorptance += 0.05) {
			const now = tubesAbsorptance(absorptance, 45 * DEGREE);
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

	it("passes its own share at square incidence", () => expect(paneTransmittance(0.9, 0)).toBe(0.9));

	it.each([10, 30, 45, 60, 75, 85, 90])("Fresnel's equations agree at a rim angle of %f°", (rim) => {
		expect(Math.abs(paneTransmittance(1, rim * DEGREE) - overDish(rim * DEGREE))).toBeLessThan(0.001);
	});
});
