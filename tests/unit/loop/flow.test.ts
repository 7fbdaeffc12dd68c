import { describe, expect, it } from "vitest";
import {
	circuitPressureDrop,
	frictionChurchill,
	regime,
	type Segment,
	segmentPressureDrop,
	segmentReynolds,
} from "../../../src/loop/flow.ts";

const tube: Segment = {
	length: 10,
	innerDiameter: 0.013,
	roughness: 1.5e-6,
	helixRatio: 0,
	density: 850,
	viscosity: 850 * 15e-6,
};
const flow = 4e-3 / 60;

describe("friction of a straight tube", () => {
	it("is 64/Re in laminar flow to the last digit at the hand-over", () => {
		expect(frictionChurchill(10, 0.01)).toBe(6.4);
		expect(frictionChurchill(1000.0001, 0)).toBeCloseTo(64 / 1000.0001, 11);
	});
	it("agrees with Colebrook's equation within 3.1 % from Re 4000 on", () => {
		for (const Re of [4e3, 1e4, 1e5, 1e6, 1e7])
			for (const roughness of [0, 1e-5, 1e-3, 1e-2]) {
				let root = 7; // 1/√f, by substitution in Colebrook & White 1939
				for (let i = 0; i < 50; i++) root = -2 * Math.log10(roughness / 3.7 + (2.51 * root) / Re);
				expect(Math.abs(frictionChurchill(Re, roughness) * root * root - 1)).toBeLessThan(0.031);
			}
	});
	it("reaches the rough limit of Nikuradse", () => {
		expect(frictionChurchill(1e8, 0.01) / (2 * Math.log10(3.7 / 0.01)) ** -2).toBeCloseTo(1, 1);
	});
	it("names the regime", () => {
		expect([100, 2299, 2301, 3999, 4001].map(regime)).toEqual([
			"laminar",
			"laminar",
			"transitional",
			"transitional",
			"turbulent",
		]);
	});
});

describe("pressure drop", () => {
	it("is Hagen–Poiseuille's in laminar flow", () => {
		expect(segmentReynolds(tube, flow)).toBeLessThan(1000);
		const exact = (128 * tube.viscosity * tube.length * flow) / (Math.PI * tube.innerDiameter ** 4);
		expect(segmentPressureDrop(tube, flow)).toBeCloseTo(exact, 6);
	});
	it("is none at rest, grows with flow, and is more in a helix", () => {
		expect(segmentPressureDrop(tube, 0)).toBe(0);
		let before = 0;
		for (let q = 1e-7; q < 1e-3; q *= 1.02) {
			const drop = segmentPressureDrop(tube, q);
			expect(drop).toBeGreaterThan(before);
			expect(segmentPressureDrop({ ...tube, helixRatio: 0.05 }, q)).toBeGreaterThanOrEqual(
				drop * (1 - 1e-12),
			);
			before = drop;
		}
	});
	it("lets roughness act in a helix too", () => {
		const rough = { ...tube, helixRatio: 0.02, roughness: 3e-4, viscosity: 3e-4 };
		expect(segmentPressureDrop(rough, 3e-4)).toBeGreaterThan(
			segmentPressureDrop({ ...rough, roughness: 1e-6 }, 3e-4) * 1.2,
		);
	});
	it("adds up along a circuit, with fittings on the first velocity head", () => {
		const wide = { ...tube, innerDiameter: 0.026 };
		const velocity = flow / ((Math.PI / 4) * 0.013 ** 2);
		expect(circuitPressureDrop([tube, wide], 8, flow)).toBeCloseTo(
			segmentPressureDrop(tube, flow) + segmentPressureDrop(wide, flow) + 8 * 0.5 * 850 * velocity ** 2,
			6,
		);
		expect(circuitPressureDrop([tube], 8, 0)).toBe(0);
	});
});
