import { describe, expect, it } from "vitest";
import { waltherLine, waltherViscosity } from "../../../src/fluids/walther.ts";

const cold = { temperature: 313.15, kinematicViscosity: 32e-6 };
const hot = { temperature: 373.15, kinematicViscosity: 5.4e-6 };

describe("Walther's line", () => {
	it("goes through both of its points, in either order", () => {
		for (const line of [waltherLine(cold, hot), waltherLine(hot, cold)])
			for (const point of [cold, hot])
				expect(waltherViscosity(line, point.temperature) / point.kinematicViscosity).toBeCloseTo(1, 9);
	});

	it("has the slope that the standard's common logarithms give", () => {
		const ordinate = (nu: number) => Math.log10(Math.log10(nu + 0.7));
		const slope = (ordinate(32) - ordinate(5.4)) / (Math.log10(373.15) - Math.log10(313.15));
		expect(waltherLine(cold, hot).slope).toBeCloseTo(slope, 10);
	});

	it("lies far below a straight chord between its points", () => {
		const chord = (32e-6 + 5.4e-6) / 2;
		expect(waltherViscosity(waltherLine(cold, hot), 343.15)).toBeLessThan(0.65 * chord);
	});
});
