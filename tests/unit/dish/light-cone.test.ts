import { describe, expect, it } from "vitest";
import { lightCone } from "../../../src/dish/light-cone.ts";
import { paneTransmittance, tubesAbsorptance } from "../../../src/receiver/slanted-light.ts";
import { perfectDish, perfectOffsetPolar } from "./mirror.ts";

/** Cosines at which the light of an off-axis mirror meets its receiver, which faces the mirror's middle: points spread
 *  evenly over the circle that the sun sees, each ray from there to the parent's focus. */
function cosinesOffAxis(mirrorArea: number, focalLength: number): readonly number[] {
	const radius = Math.sqrt((mirrorArea * Math.cos((43.23 * Math.PI) / 180)) / Math.PI);
	const parent = focalLength / 2;
	const cosines: number[] = [];
	for (let i = 0; i < 60; i++)
		for (let j = 0; j < 60; j++) {
			const ring = radius * Math.sqrt((i + 0.5) / 60);
			const bearing = ((j + 0.5) * Math.PI) / 30;
			const [x, y] = [ring * Math.sin(bearing), focalLength + ring * Math.cos(bearing)];
			const height = (x * x + y * y) / (4 * parent) - parent; // of the mirror over its focus
			cosines.push(y / Math.hypot(x, y, height));
		}
	return cosines;
}

/** The share that a law of the cone tells of light at one angle: the slope of x·law(x) by x = tan²(ψ/2). */
function atAngle(law: (rim: number) => number, cosine: number): number {
	const x = (1 - cosine) / (1 + cosine);
	const summed = (spread: number) => spread * law(2 * Math.atan(Math.sqrt(spread)));
	const step = 1e-4;
	return (summed(x + step) - summed(Math.max(0, x - step))) / (step + Math.min(step, x));
}

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

describe("cone of light", () => {
	it("of a two-axis dish is its rim angle", () => {
		expect((lightCone(perfectDish) * 180) / Math.PI).toBeCloseTo(67.38, 2); // D 1.8 m, f 0.675 m
	});

	it.each([
		["as built", 0.98 * Math.sqrt(8), 0.001, 0.003],
		["the nearest focus allowed", (0.483 / 0.9) * Math.sqrt(8), 0.003, 0.02],
	] as const)(
		"of an off-axis dish on a polar axis says the same as ray by ray, %s",
		(_, focalLength, tubes, pane) => {
			const cosines = cosinesOffAxis(8, focalLength);
			const cone = lightCone({ ...perfectOffsetPolar, focalLength });
			const tube = (rim: number) => tubesAbsorptance(0.94, rim);
			const glass = (rim: number) => paneTransmittance(1, rim);
			expect(Math.abs(tube(cone) - mean(cosines.map((c) => atAngle(tube, c))))).toBeLessThan(tubes);
			expect(Math.abs(glass(cone) - mean(cosines.map((c) => atAngle(glass, c))))).toBeLessThan(pane);
		},
	);
});
