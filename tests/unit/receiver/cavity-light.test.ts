import { describe, expect, it } from "vitest";
import { cavityAbsorptance, discViewFromBack, discViewFromSide } from "../../../src/receiver/cavity-light.ts";
import { PAINT_IN_DIFFUSE_LIGHT, paintAtAngle } from "../../../src/receiver/paint.ts";
import { absorbed, expectTraced, HOLLOW_NAMES, HOLLOWS } from "./hollows.ts";
import { paintAt } from "./painted-trace.ts";
import { cavity } from "./receivers.ts";

const DEGREE = Math.PI / 180;

describe("light in a painted hollow", () => {
	// Every shape once, and every rim angle in the usual one: the cross of the sweep in cavity-light.slow.test.ts.
	const cases: readonly (readonly [keyof typeof HOLLOWS, number])[] = [
		...HOLLOW_NAMES.map((name) => [name, 60] as const),
		...[20, 45, 75, 90].map((rim) => ["usual", rim] as const),
	];

	it.each(cases)("%s: agrees with traced rays at a rim angle of %f°", expectTraced);

	it("falls from a dish of 45° to one of 90° in a hollow of usual shape; light from behind the face does not count", () => {
		for (let rim = 48; rim <= 90; rim += 3)
			expect(absorbed(HOLLOWS.usual, 0.94, rim)).toBeLessThan(absorbed(HOLLOWS.usual, 0.94, rim - 3));
		expect(absorbed(HOLLOWS.usual, 0.94, 120)).toBe(absorbed(HOLLOWS.usual, 0.94, 90));
	});

	it("a blacker paint takes more, none takes none, and a pinhole all", () => {
		expect(absorbed(HOLLOWS.usual, 0, 45)).toBe(0);
		for (let absorptance = 0.05; absorptance <= 1.001; absorptance += 0.05) {
			const now = absorbed(HOLLOWS.usual, absorptance, 45);
			expect(now).toBeGreaterThan(absorbed(HOLLOWS.usual, absorptance - 0.05, 45));
			expect(now).toBeLessThan(1);
		}
		const pinhole = { ...cavity, apertureDiameter: 1e-6, absorptance: 0.3 };
		const ring = 0.25 / (2 * 0.5 * (1 + 0.25)); // a hollow as deep as wide: front over wall
		expect(cavityAbsorptance(pinhole, 45 * DEGREE)).toBeLessThan(1);
		expect(cavityAbsorptance(pinhole, 45 * DEGREE)).toBeGreaterThan(1 - 2 * ring);
	});
});

describe("black paint", () => {
	it("takes light at a slant as Duffie & Beckman's law, none along its face", () => {
		expect(paintAtAngle(0)).toBe(1);
		for (const degrees of [20, 45, 70, 79.99, 85])
			expect(paintAtAngle(degrees * DEGREE)).toBeCloseTo(paintAt(Math.cos(degrees * DEGREE)), 10);
		expect(paintAtAngle(Math.PI / 2)).toBe(0);
	});

	it("takes of light from all sides the law's mean by cosine", () => {
		const parts = 20_000;
		let sum = 0;
		for (let i = 0; i < parts; i++) {
			const cosine = (i + 0.5) / parts;
			sum += (2 * cosine * paintAtAngle(Math.acos(cosine))) / parts;
		}
		expect(PAINT_IN_DIFFUSE_LIGHT).toBeCloseTo(sum, 4);
	});
});

describe("views of a disc", () => {
	it("from its axis r²/(h² + r²); from beside one that fills the hollow one half; none from afar", () => {
		expect(discViewFromBack(0.3, 0.4, 0)).toBeCloseTo(0.36, 12);
		expect(discViewFromSide(0.5, 1e-9, 0.5)).toBeCloseTo(0.5, 6);
		expect(discViewFromBack(0.5, 1e3, 0.2)).toBeLessThan(1e-6);
		expect(discViewFromSide(0.5, 1e3, 0.5)).toBeLessThan(1e-6);
	});

	it("summed over back and side of a hollow give the disc's area: all that it sends in strikes the one or the other", () => {
		const [radius, depth, disc, parts] = [0.65, 1.3, 0.5, 20_000];
		let sum = 0;
		for (let i = 0; i < parts; i++) {
			const share = (i + 0.5) / parts;
			sum += (2 * radius * depth * discViewFromSide(disc, share * depth, radius)) / parts;
			sum += (radius * radius * discViewFromBack(disc, depth, radius * Math.sqrt(share))) / parts;
		}
		expect(sum).toBeCloseTo(disc * disc, 6);
	});
});
